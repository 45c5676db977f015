//! Where the values come from: the file, over it the environment, over that the flags.

use super::fault::SettingFault;
use super::list::{Form, SETTINGS, Setting};
use crate::service::fault_list::nearest;
use std::collections::BTreeMap;
use std::fmt;

/// Where a value was given.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Source {
    /// Nowhere: the default.
    Default,
    /// In the settings file.
    File,
    /// In the environment.
    Environment,
    /// On the command line.
    Flag,
}

impl fmt::Display for Source {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::Default => "default",
            Self::File => "settings file",
            Self::Environment => "environment",
            Self::Flag => "flag",
        })
    }
}

/// A value as it was given.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Given {
    /// The text; lists separated by commas.
    pub text: String,
    /// Where it was given.
    pub source: Source,
}

/// Every value that is in force, by name of its setting.
#[derive(Clone, Debug)]
pub struct Values(BTreeMap<&'static str, Given>);

impl Values {
    /// Gathers the values: the flags by name, the environment by variable, the text of the file.
    pub fn gather(
        flags: &BTreeMap<&'static str, String>,
        environment: impl Fn(&str) -> Option<String>,
        file: Option<&str>,
        faults: &mut Vec<SettingFault>,
    ) -> Self {
        let file = file.map(|text| from_file(text, faults)).unwrap_or_default();
        let value = |setting: &Setting| {
            let flag = flags.get(setting.name).map(|text| (text.clone(), Source::Flag));
            let given = flag
                .or_else(|| environment(&setting.variable()).map(|text| (text, Source::Environment)))
                .or_else(|| file.get(setting.name).map(|text| (text.clone(), Source::File)));
            let (text, source) = given.unwrap_or_else(|| (setting.default.to_owned(), Source::Default));
            (setting.name, Given { text, source })
        };
        Self(SETTINGS.iter().map(value).collect())
    }

    /// The value of a setting; `None` when it is empty.
    pub fn get(&self, name: &str) -> Option<&Given> {
        self.0.get(name).filter(|given| !given.text.is_empty())
    }

    /// Every value with its setting.
    pub fn iter(&self) -> impl Iterator<Item = (&'static Setting, &Given)> {
        SETTINGS.iter().filter_map(|setting| Some((setting, self.0.get(setting.name)?)))
    }
}

fn from_file(text: &str, faults: &mut Vec<SettingFault>) -> BTreeMap<&'static str, String> {
    let mut values = BTreeMap::new();
    let table: toml::Table = match text.parse() {
        Ok(table) => table,
        Err(error) => {
            faults.push(SettingFault::of_file(error.to_string().trim_end()));
            return values;
        }
    };
    for (member, value) in &table {
        let Some(setting) = SETTINGS.iter().find(|setting| setting.member() == *member) else {
            let members: Vec<String> = SETTINGS.iter().map(Setting::member).collect();
            let near = nearest(member, members.iter().map(String::as_str));
            let hint = near.map(|near| format!("; {near} is")).unwrap_or_default();
            faults.push(SettingFault::of_file(&format!("{member} is no setting{hint}")));
            continue;
        };
        match written(setting, value) {
            Some(text) => {
                values.insert(setting.name, text);
            }
            None => faults.push(SettingFault::of_file(&format!("{member} has a value of the wrong type"))),
        }
    }
    values
}

/// A value of the file as a flag would write it.
fn written(setting: &Setting, value: &toml::Value) -> Option<String> {
    use toml::Value;
    match (setting.form, value) {
        (Form::List, Value::Array(members)) => {
            let members: Option<Vec<&str>> = members.iter().map(Value::as_str).collect();
            members.map(|members| members.join(","))
        }
        (Form::Switch, Value::Boolean(yes)) => Some(yes.to_string()),
        (Form::Value | Form::Secret, Value::String(text)) => Some(text.clone()),
        (Form::Value, Value::Integer(number)) => Some(number.to_string()),
        _ => None,
    }
}
