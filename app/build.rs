//! What dividing the program needs of the linker.

fn main() {
    println!("cargo::rerun-if-changed=build.rs");
    let is_wasm = std::env::var("CARGO_CFG_TARGET_FAMILY").is_ok_and(|family| family == "wasm");
    if is_wasm && std::env::var_os("CARGO_FEATURE_SPLIT").is_some() {
        println!("cargo::rustc-link-arg-bins=--emit-relocs");
    }
}
