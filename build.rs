//! Builds anew when a file changes that is compiled into the program.

fn main() {
    for folder in ["locales", "templates", "fonts", "audio", "examples"] {
        println!("cargo:rerun-if-changed={folder}");
    }
}
