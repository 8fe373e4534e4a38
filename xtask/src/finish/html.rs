//! Attributes of the tags of our own page. Trunk writes it from index.html, so values are in double
//! quotes and hold no `<` or `>`.

/// The page with each opening tag as `change` would have it; `None` leaves it as it is.
pub fn with_tags(page: &str, mut change: impl FnMut(&str) -> Option<String>) -> String {
    let mut made = String::with_capacity(page.len());
    let mut rest = page;
    while let Some(start) = rest.find('<') {
        let (before, from) = rest.split_at(start);
        made.push_str(before);
        let end = if from.starts_with("<!--") { "-->" } else { ">" };
        let length = from.find(end).map_or(from.len(), |it| it + end.len());
        let (tag, after) = from.split_at(length);
        match change(tag) {
            Some(changed) => made.push_str(&changed),
            None => made.push_str(tag),
        }
        rest = after;
    }
    made.push_str(rest);
    made
}

/// Whether a tag is of this element.
pub fn is(tag: &str, element: &str) -> bool {
    tag.strip_prefix('<')
        .and_then(|it| it.strip_prefix(element))
        .is_some_and(|it| it.starts_with([' ', '>', '/']))
}

/// The value of a tag's attribute.
pub fn value<'a>(tag: &'a str, attribute: &str) -> Option<&'a str> {
    let start = format!(" {attribute}=\"");
    let (_, from) = tag.split_once(&start)?;
    from.split_once('"').map(|(value, _)| value)
}

/// The tag with an attribute set.
pub fn with(tag: &str, attribute: &str, to: &str) -> String {
    match value(tag, attribute) {
        Some(old) => tag.replacen(
            &format!(" {attribute}=\"{old}\""),
            &format!(" {attribute}=\"{to}\""),
            1,
        ),
        None => {
            let end = if tag.ends_with("/>") { 2 } else { 1 };
            let (head, tail) = tag.split_at(tag.len() - end);
            format!("{head} {attribute}=\"{to}\"{tail}")
        }
    }
}

/// The content of a meta tag by its name, or by what it stands for in the head of an answer.
pub fn meta<'a>(page: &'a str, key: &str, name: &str) -> Option<&'a str> {
    page.split_inclusive('>')
        .filter_map(|piece| piece.find("<meta ").and_then(|at| piece.get(at..)))
        .find(|tag| value(tag, key) == Some(name))
        .and_then(|tag| value(tag, "content"))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn attributes_are_added_replaced_and_read() {
        let page = "<!-- <link a=\"0\"> --><link a=\"1\"/>text<meta name=\"n\" content=\"c\">";
        let made = with_tags(page, |tag| {
            is(tag, "link").then(|| with(&with(tag, "a", "2"), "b", "3"))
        });
        assert_eq!(
            made,
            "<!-- <link a=\"0\"> --><link a=\"2\" b=\"3\"/>text<meta name=\"n\" content=\"c\">"
        );
        assert_eq!(meta(&made, "name", "n"), Some("c"));
        assert_eq!(meta(&made, "name", "m"), None);
    }
}
