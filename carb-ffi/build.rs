//! Gives the shared library its name at run time, which cargo does not do by itself.

fn main() {
    // The number is CARB_ABI_VERSION of src/lib.rs; tests/c.sh runs programs that were linked with both.
    let target = std::env::var("CARGO_CFG_TARGET_OS").unwrap_or_default();
    if target == "linux" {
        println!("cargo:rustc-cdylib-link-arg=-Wl,-soname,libcarb.so.0");
    }
    println!("cargo:rerun-if-changed=build.rs");
}
