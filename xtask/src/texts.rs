//! What the page says, packed: a file for each language.
//!
//! The folder is named by their version, so that a page asks for no other version's texts. Trunk copies
//! it and puts the list into the page.

use anyhow::{Result, bail};
use farend_lang::Texts;
use farend_lang::packed::Packed;

use crate::host::Host;

pub fn write(host: &Host) -> Result<()> {
    let texts = match Texts::read(&host.root.join("app").join("lang")) {
        Ok(texts) => texts,
        Err(faults) => {
            let told: Vec<_> = faults.iter().map(|it| format!("app/lang/{it}")).collect();
            bail!("{}", told.join("\n"));
        }
    };
    let packed = Packed::of(&texts);
    let sh = &host.sh;
    let target = host.root.join("target");
    let folder = target.join("text");
    sh.remove_path(&folder)?;
    let mut list = packed.version.clone();
    for (tag, content) in &packed.files {
        sh.write_file(
            folder.join(&packed.version).join(format!("{tag}.txt")),
            content,
        )?;
        list.push_str(&format!(" {tag}"));
    }
    Ok(sh.write_file(target.join("text-list"), list)?)
}
