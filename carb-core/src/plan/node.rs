//! A tree that is written as JSON, its members in the order in which they were put in.

use alloc::string::{String, ToString};
use alloc::vec::Vec;
use serde::ser::{Serialize, SerializeMap, Serializer};

/// A JSON value to be written.
#[derive(Clone, Debug)]
pub(crate) enum Node {
    Null,
    Number(f64),
    Whole(i64),
    Flag(bool),
    Text(String),
    List(Vec<Node>),
    Object(Vec<(String, Node)>),
}

impl Node {
    pub(crate) fn text(text: impl ToString) -> Self {
        Node::Text(text.to_string())
    }

    /// A number, or null where it is not finite: JSON has no infinity, and an open limit is no number.
    pub(crate) fn number(value: f64) -> Self {
        if value.is_finite() { Node::Number(value) } else { Node::Null }
    }

    /// Puts a member into an object.
    pub(crate) fn put(&mut self, name: impl ToString, value: Node) {
        if let Node::Object(members) = self {
            members.push((name.to_string(), value));
        }
    }

    /// Puts a member into the member `noun` of an object (made where it is not there), or into the object itself where
    /// the noun is empty.
    pub(crate) fn put_under(&mut self, noun: &str, name: impl ToString, value: Node) {
        let Node::Object(members) = self else { return };
        if noun.is_empty() {
            members.push((name.to_string(), value));
            return;
        }
        match members.iter_mut().find(|(member, _)| member == noun) {
            Some((_, inner)) => inner.put(name, value),
            None => {
                let mut inner = Node::Object(Vec::new());
                inner.put(name, value);
                members.push((noun.to_string(), inner));
            }
        }
    }
}

impl Serialize for Node {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        match self {
            Node::Null => serializer.serialize_unit(),
            Node::Number(value) => serializer.serialize_f64(*value),
            Node::Whole(value) => serializer.serialize_i64(*value),
            Node::Flag(flag) => serializer.serialize_bool(*flag),
            Node::Text(text) => serializer.serialize_str(text),
            Node::List(items) => serializer.collect_seq(items),
            Node::Object(members) => {
                let mut map = serializer.serialize_map(Some(members.len()))?;
                for (name, value) in members {
                    map.serialize_entry(name, value)?;
                }
                map.end()
            }
        }
    }
}
