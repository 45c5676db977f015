//! What is wrong with a setting.

use super::list::{Form, Setting};
use super::sources::{Given, Source};
use std::fmt;

/// One fault: which setting, where it was given, what would be right.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct SettingFault(String);

impl SettingFault {
    /// A fault of the settings file.
    pub fn of_file(what: &str) -> Self {
        Self(format!("settings file: {what}"))
    }

    /// A value that is not one of its setting.
    pub fn of_value(setting: &Setting, given: &Given, wrong: &str) -> Self {
        let place = match given.source {
            Source::Default | Source::Flag => format!("--{}", setting.name),
            Source::Environment => setting.variable(),
            Source::File => format!("settings file: {}", setting.member()),
        };
        match setting.form {
            Form::Secret => Self(format!("{place}: the value {wrong}")),
            _ => Self(format!("{place}: {:?} {wrong}", given.text)),
        }
    }

    /// A fault between settings.
    pub fn told(what: impl Into<String>) -> Self {
        Self(what.into())
    }
}

impl fmt::Display for SettingFault {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.0)
    }
}
