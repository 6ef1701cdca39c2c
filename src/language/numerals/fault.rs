//! What is wrong with a rule, before its line is known.

/// Message and hint.
pub(super) type Fault = (String, String);

pub(super) fn fault(message: impl Into<String>, hint: impl Into<String>) -> Fault {
    (message.into(), hint.into())
}
