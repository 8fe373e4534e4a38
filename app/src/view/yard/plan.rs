//! What of a form stands open, and what is folded: never a wall of boxes.

use farend_core::yard::list::List;
use farend_core::yard::rules::YARD;
use farend_core::yard::shape::{Field, Shape};

/// The most optional figures that stand open in a group.
const MOST_OPEN: usize = 4;

/// A form's fields by how they are shown.
pub struct Plan {
    /// Single figures that stand open.
    pub open: Vec<&'static Field>,
    /// Groups that stand open.
    pub groups: Vec<&'static Field>,
    /// Groups and lists, each folded.
    pub folded: Vec<&'static Field>,
    /// Single figures that are folded together.
    pub more: Vec<&'static Field>,
}

impl Plan {
    /// That of a whole entry: what must be there is open.
    pub fn of_entry(fields: &'static [Field]) -> Self {
        let open = |field: &Field| field.required && !matches!(field.shape, Shape::Id);
        Self::of(fields.iter().collect(), open)
    }

    /// That of a group: what must be there is open, and the rest too where it's little.
    pub fn of_group(fields: &'static [Field]) -> Self {
        let optional = fields.iter().filter(|it| !it.required && is_single(it));
        let little = optional.count() <= MOST_OPEN;
        Self::of(fields.iter().collect(), |field| field.required || little)
    }

    /// That of the yard itself.
    pub fn of_yard() -> Self {
        Self::of(own_fields().collect(), |_| true)
    }

    fn of(fields: Vec<&'static Field>, open: impl Fn(&Field) -> bool) -> Self {
        let mut plan = Self {
            open: Vec::new(),
            groups: Vec::new(),
            folded: Vec::new(),
            more: Vec::new(),
        };
        for field in fields {
            let part = match (is_single(field), open(field)) {
                (true, true) => &mut plan.open,
                (true, false) => &mut plan.more,
                (false, _) if field.required => &mut plan.groups,
                (false, _) => &mut plan.folded,
            };
            part.push(field);
        }
        if plan.open.is_empty() {
            plan.open.append(&mut plan.more);
        }
        plan
    }
}

fn is_single(field: &Field) -> bool {
    !matches!(field.shape, Shape::Group(_) | Shape::Many { .. })
}

/// The yard's own fields, but for its lists and the version of its file.
fn own_fields() -> impl Iterator<Item = &'static Field> {
    let listed = |key: &str| List::WORDS.contains(&key);
    YARD.iter()
        .filter(move |field| !listed(field.key) && field.key != "format_version")
}

#[cfg(test)]
mod tests {
    use super::{MOST_OPEN, Plan};
    use farend_core::yard::list::List;
    use farend_core::yard::shape::{Field, Shape};

    fn count(plan: &Plan) -> usize {
        plan.open.len() + plan.groups.len() + plan.folded.len() + plan.more.len()
    }

    #[test]
    fn every_field_is_somewhere() {
        for list in List::ALL {
            assert_eq!(count(&Plan::of_entry(list.fields())), list.fields().len());
        }
        assert_eq!(count(&Plan::of_yard()), 7);
    }

    /// How many boxes stand open at once.
    fn open(plan: &Plan) -> usize {
        let in_groups = plan.groups.iter().map(|field| match field.shape {
            Shape::Group(of) => open(&Plan::of_group(of)),
            _ => 0,
        });
        plan.open.len() + in_groups.sum::<usize>()
    }

    fn groups(fields: &'static [Field], see: &mut impl FnMut(&'static [Field])) {
        for field in fields {
            if let Shape::Group(of) | Shape::Many { of, .. } = field.shape {
                see(of);
                groups(of, see);
            }
        }
    }

    #[test]
    fn there_is_never_a_wall_of_boxes() {
        const MOST: usize = 12;
        for list in List::ALL {
            assert!(open(&Plan::of_entry(list.fields())) <= MOST);
            groups(list.fields(), &mut |of| {
                let plan = Plan::of_group(of);
                assert!(open(&plan) <= MOST, "{:?}", plan.open);
                assert!(plan.more.is_empty() || plan.more.len() > MOST_OPEN);
            });
        }
    }
}
