//! Makes a function of each message in `lang/`, and holds the languages against each other. Asks of the
//! linker what dividing the program needs.

use farend_lang::packed::Packed;
use farend_lang::{Texts, rust};
use std::path::Path;
use std::{env, fs, process};

fn main() {
    let is_wasm = env::var("CARGO_CFG_TARGET_FAMILY").is_ok_and(|family| family == "wasm");
    if is_wasm && env::var_os("CARGO_FEATURE_SPLIT").is_some() {
        println!("cargo::rustc-link-arg-bins=--emit-relocs");
    }
    println!("cargo::rerun-if-changed=lang");
    let texts = Texts::read(Path::new("lang")).unwrap_or_else(|faults| {
        for fault in faults {
            eprintln!("app/lang/{fault}");
        }
        process::exit(1);
    });
    let packed = Packed::of(&texts);
    let folder = env::var_os("OUT_DIR").expect("cargo names the folder for what is made");
    let write = |name: &str, content: &str| {
        fs::write(Path::new(&folder).join(name), content).expect("the folder takes files");
    };
    write("marks.rs", &rust::marks());
    write("messages.rs", &rust::functions(&texts));
    write("languages.rs", &rust::languages(&texts));
    // For tests, and wherever no start script hands over what it loaded.
    write("built_in.rs", &rust::built_in(&packed));
    for (tag, content) in &packed.files {
        write(&format!("{tag}.txt"), content);
    }
}
