//! Every public function of the physics that computes says by which equation, in which units, for which
//! range and from which source, and what is refused.

use std::collections::BTreeSet;
use std::path::Path;

use anyhow::Result;
use syn::visit::{self, Visit};

use super::docs::{Function, functions};
use super::files::{File, under};
use super::syntax::parsed;

const FOLDER: &str = "core/src/physics";

pub fn check(root: &Path) -> Result<Vec<String>> {
    let mut faults = Vec::new();
    for file in under(root, FOLDER, &["rs"])? {
        faults.extend(of(&file)?);
    }
    Ok(faults)
}

fn of(file: &File) -> Result<Vec<String>> {
    let program = parsed(file)?;
    let functions = functions(&program);
    let computing = computing(&functions);
    let public = functions
        .iter()
        .filter(|it| it.public && computing.contains(&it.name()));
    let faults = public.filter_map(|it| {
        let missing = missing(it, &file.text);
        let name = it.name();
        (!missing.is_empty())
            .then(|| format!("{}: {name} says no {}", file.path, missing.join(", ")))
    });
    Ok(faults.collect())
}

/// What a function's comment should say and doesn't.
fn missing(function: &Function<'_>, text: &str) -> Vec<&'static str> {
    let says = |what: &str| function.doc.contains(what);
    let is_formula = |line: &str| {
        line.trim_start()
            .strip_prefix("//")
            .is_some_and(|it| it.contains(['=', '≈']))
    };
    let has_equation = says("Equation:") || function.lines(text).any(is_formula);
    let refuses = match &function.signature.output {
        syn::ReturnType::Type(_, it) => outermost(it).is_some_and(|it| it == "Result"),
        syn::ReturnType::Default => false,
    };
    [
        (!has_equation, "equation"),
        (!says("Units:"), "units"),
        (!says("Valid range:"), "valid range"),
        (!says("Source:"), "source"),
        (refuses && !says("# Errors"), "errors"),
    ]
    .into_iter()
    .filter_map(|(lacks, what)| lacks.then_some(what))
    .collect()
}

fn outermost(it: &syn::Type) -> Option<&syn::Ident> {
    match it {
        syn::Type::Path(it) => it.path.segments.last().map(|it| &it.ident),
        _ => None,
    }
}

/// Names of the functions that reckon, by themselves or by others of the file that aren't public: those
/// say it themselves.
fn computing(functions: &[Function<'_>]) -> BTreeSet<String> {
    let reckonings: Vec<_> = functions
        .iter()
        .map(|it| {
            let mut reckoning = Reckoning::default();
            reckoning.visit_block(it.body);
            (it, reckoning)
        })
        .collect();
    let mut found = BTreeSet::new();
    loop {
        let before = found.len();
        let hidden: BTreeSet<_> = functions
            .iter()
            .filter(|it| !it.public && found.contains(&it.name()))
            .map(Function::name)
            .collect();
        for (function, reckoning) in &reckonings {
            if reckoning.computes || reckoning.calls.iter().any(|it| hidden.contains(it)) {
                found.insert(function.name());
            }
        }
        if found.len() == before {
            return found;
        }
    }
}

/// Arithmetic and calls in a function's body.
#[derive(Default)]
struct Reckoning {
    computes: bool,
    calls: BTreeSet<String>,
}

/// Functions of `libm` as they are called; a name of ours that is the same would reckon too.
const LIBM: [&str; 12] = [
    "acos", "asin", "atan", "atan2", "cbrt", "cos", "exp", "log", "log10", "pow", "sin", "sqrt",
];

impl Visit<'_> for Reckoning {
    fn visit_expr_binary(&mut self, it: &syn::ExprBinary) {
        use syn::BinOp::{Add, AddAssign, Div, DivAssign, Mul, MulAssign, Sub, SubAssign};
        self.computes |= matches!(
            it.op,
            Add(_)
                | AddAssign(_)
                | Div(_)
                | DivAssign(_)
                | Mul(_)
                | MulAssign(_)
                | Sub(_)
                | SubAssign(_)
        );
        visit::visit_expr_binary(self, it);
    }

    fn visit_expr_call(&mut self, it: &syn::ExprCall) {
        if let syn::Expr::Path(path) = &*it.func
            && let Some(name) = path.path.segments.last()
        {
            let name = name.ident.to_string();
            self.computes |= LIBM.contains(&name.as_str());
            self.calls.insert(name);
        }
        visit::visit_expr_call(self, it);
    }

    fn visit_expr_method_call(&mut self, it: &syn::ExprMethodCall) {
        self.calls.insert(it.method.to_string());
        visit::visit_expr_method_call(self, it);
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn faults(code: &str) -> Vec<String> {
        let path = "planted.rs".to_owned();
        let text = code.to_owned();
        of(&File { path, text }).unwrap()
    }

    const WHOLE: &str = "
        /// Torque.
        ///
        /// Equation: T = P/ω. Units: SI. Valid range: any. Source: definition.
        ///
        /// # Errors
        /// Where nothing turns.
        pub fn torque(power: f64, speed: f64) -> Result<f64, Standstill> { Ok(power / speed) }
    ";

    #[test]
    fn each_thing_left_out_is_told() {
        assert!(faults(WHOLE).is_empty());
        for (said, told) in [
            ("Equation: T = P/ω.", "equation"),
            ("Units: SI.", "units"),
            ("Valid range: any.", "valid range"),
            ("Source: definition.", "source"),
            ("# Errors", "errors"),
        ] {
            let planted = WHOLE.replace(said, "");
            let expected = format!("planted.rs: torque says no {told}");
            assert_eq!(faults(&planted), [expected]);
        }
    }

    #[test]
    fn a_formula_above_its_expression_is_an_equation() {
        let commented = WHOLE
            .replace("Equation: T = P/ω.", "")
            .replace("{ Ok(", "{\n// T = P/ω\nOk(");
        assert!(faults(&commented).is_empty());
    }

    #[test]
    fn what_a_hidden_function_reckons_is_told_by_who_calls_it() {
        let bare = "pub fn area(d: f64) -> f64 { square(d) } fn square(x: f64) -> f64 { x * x }";
        assert_eq!(faults(bare).len(), 1);
        let root = "impl Pipe { pub fn bore(self) -> f64 { libm::sqrt(self.area) } }";
        assert_eq!(faults(root).len(), 1);
        assert!(faults("pub fn other(end: End) -> End { end.turned() }").is_empty());
    }
}
