//! Finds what could be written otherwise: comparisons and their boundaries, logic, sums, conditions, small numbers.
//!
//! What is left alone: constants, patterns, types, attributes, what macros are given, tests, and what serves words or schemas.

use std::collections::{BTreeMap, BTreeSet};
use std::ops::Range;
use syn::spanned::Spanned;
use syn::visit::{self, Visit};
use syn::{BinOp, Expr, Lit, UnOp};

/// One place, written otherwise.
#[derive(Clone, Debug)]
pub struct Mutant {
    /// The same as long as its function is called the same and the place is written the same.
    pub key: u64,
    /// The file, from the root of the project.
    pub file: String,
    /// The function, with what it belongs to.
    pub function: String,
    /// The line, from 1.
    pub line: usize,
    /// The expression, as bytes of the file.
    pub place: Range<usize>,
    /// What stands there instead.
    pub instead: String,
    /// The word `const` of the function, which the copy leaves out.
    pub constness: Option<Range<usize>>,
    /// What is changed to what, on one line.
    pub change: String,
}

/// A key as it is written.
pub fn written(key: u64) -> String {
    format!("{key:016x}")
}

/// A number that stays the same from one version of a compiler to the next (FNV-1a, its bits mixed).
pub fn hash(parts: &[&str]) -> u64 {
    let mut value: u64 = 0xcbf2_9ce4_8422_2325;
    for byte in parts.iter().flat_map(|part| part.bytes().chain([0])) {
        value = (value ^ u64::from(byte)).wrapping_mul(0x0100_0000_01b3);
    }
    value = (value ^ (value >> 33)).wrapping_mul(0xff51_afd7_ed55_8ccd);
    value = (value ^ (value >> 33)).wrapping_mul(0xc4ce_b9fe_1a85_ec53);
    value ^ (value >> 33)
}

/// Every mutant of a file, in the order of the text.
pub fn find(file: &str, text: &str, syntax: &syn::File, stays_const: &BTreeSet<String>) -> Vec<Mutant> {
    let mut finder = Finder {
        file,
        text,
        stays_const,
        scope: Vec::new(),
        runs: false,
        constness: None,
        seen: BTreeMap::new(),
        found: Vec::new(),
    };
    finder.visit_file(syntax);
    finder.found
}

/// The modules of a file that are compiled for tests only.
pub fn test_modules(syntax: &syn::File) -> impl Iterator<Item = String> {
    syntax.items.iter().filter_map(|item| match item {
        syn::Item::Mod(module) if module.content.is_none() && is_for_tests(&module.attrs) => {
            Some(module.ident.to_string())
        }
        _ => None,
    })
}

struct Finder<'a> {
    file: &'a str,
    text: &'a str,
    stays_const: &'a BTreeSet<String>,
    scope: Vec<String>,
    /// Whether what is visited is code that runs, and not a constant.
    runs: bool,
    constness: Option<Range<usize>>,
    seen: BTreeMap<[String; 3], usize>,
    found: Vec<Mutant>,
}

fn is_for_tests(attributes: &[syn::Attribute]) -> bool {
    attributes.iter().any(|attribute| {
        let list = attribute.meta.require_list();
        attribute.path().is_ident("test")
            || attribute.path().is_ident("cfg") && list.is_ok_and(|list| list.tokens.to_string() == "test")
    })
}

/// Functions that serve words and schemas.
const FOR_WORDS: [&str; 3] = ["fmt", "schema", "schemas"];

/// Methods that are easily taken for one another.
const METHODS: [[&str; 2]; 14] = [
    ["all", "any"],
    ["and", "or"],
    ["back", "front"],
    ["checked_add", "checked_sub"],
    ["first", "last"],
    ["is_none", "is_some"],
    ["is_none_or", "is_some_and"],
    ["max", "min"],
    ["max_by", "min_by"],
    ["max_by_key", "min_by_key"],
    ["pop", "last"],
    ["saturating_add", "saturating_sub"],
    ["skip", "take"],
    ["skip_while", "take_while"],
];

/// Methods that answer yes or no.
const ANSWERS: [&str; 3] = ["contains", "contains_key", "is_empty"];

/// The operator that could be meant; of a comparison the one that differs at its boundary.
const fn otherwise(operator: &BinOp) -> Option<&'static str> {
    Some(match operator {
        BinOp::Lt(_) => "<=",
        BinOp::Le(_) => "<",
        BinOp::Gt(_) => ">=",
        BinOp::Ge(_) => ">",
        BinOp::Eq(_) => "!=",
        BinOp::Ne(_) => "==",
        BinOp::And(_) => "||",
        BinOp::Or(_) => "&&",
        BinOp::Add(_) => "-",
        BinOp::Sub(_) => "+",
        BinOp::Mul(_) | BinOp::Rem(_) => "/",
        BinOp::Div(_) => "*",
        BinOp::BitAnd(_) => "|",
        BinOp::BitOr(_) => "&",
        BinOp::Shl(_) => ">>",
        BinOp::Shr(_) => "<<",
        BinOp::AddAssign(_) => "-=",
        BinOp::SubAssign(_) => "+=",
        BinOp::BitAndAssign(_) => "|=",
        BinOp::BitOrAssign(_) => "&=",
        _ => return None,
    })
}

/// Whether a condition binds names: it cannot stand in another place than its own.
fn binds(expression: &Expr) -> bool {
    match expression {
        Expr::Let(_) => true,
        Expr::Binary(binary) => binds(&binary.left) || binds(&binary.right),
        _ => false,
    }
}

impl Finder<'_> {
    fn within(&mut self, name: Option<String>, visit: impl FnOnce(&mut Self)) {
        let outside = (self.runs, self.constness.clone(), self.scope.len());
        self.scope.extend(name);
        visit(self);
        self.scope.truncate(outside.2);
        (self.runs, self.constness) = (outside.0, outside.1);
    }

    fn constant(&mut self, name: Option<String>, visit: impl FnOnce(&mut Self)) {
        self.within(name, |this| {
            this.runs = false;
            visit(this);
        });
    }

    fn function(
        &mut self,
        attributes: &[syn::Attribute],
        signature: &syn::Signature,
        visit: impl FnOnce(&mut Self),
    ) {
        let name = signature.ident.to_string();
        if is_for_tests(attributes) || FOR_WORDS.contains(&&*name) {
            return;
        }
        let stays_const = signature.constness.is_some() && self.stays_const.contains(&name);
        self.within(Some(name), |this| {
            this.runs = !stays_const;
            this.constness = signature.constness.as_ref().map(|word| word.span().byte_range());
            visit(this);
        });
    }

    /// Notes that the part of an expression could be something else.
    fn part(&mut self, whole: &Expr, part: Range<usize>, instead: &str) {
        let place = whole.span().byte_range();
        let text = |range: Range<usize>| self.text.get(range).unwrap_or_default();
        let instead = [text(place.start..part.start), instead, text(part.end..place.end)].concat();
        self.note(whole, instead);
    }

    /// Notes that an expression could be something else.
    fn note(&mut self, whole: &Expr, instead: String) {
        let place = whole.span().byte_range();
        let plain = |text: &str| text.split_whitespace().collect::<Vec<_>>().join(" ");
        let before = plain(self.text.get(place.clone()).unwrap_or_default());
        let (after, function) = (plain(&instead), self.scope.join("::"));
        let same = [function.clone(), before.clone(), after.clone()];
        let ordinal = self.seen.entry(same).and_modify(|ordinal| *ordinal += 1).or_default();
        let key = hash(&[self.file, &function, &before, &after, &ordinal.to_string()]);
        self.found.push(Mutant {
            key,
            file: self.file.to_owned(),
            function,
            line: whole.span().start().line,
            place,
            instead,
            constness: self.constness.clone(),
            change: format!("{before} → {after}"),
        });
    }

    fn condition(&mut self, condition: &Expr, others: &[&str]) {
        if self.runs && !binds(condition) && !matches!(condition, Expr::Lit(_)) {
            for other in others {
                self.note(condition, (*other).to_owned());
            }
        }
    }

    fn expression(&mut self, whole: &Expr) {
        match whole {
            Expr::Binary(binary) if !binds(whole) => {
                if let Some(other) = otherwise(&binary.op) {
                    self.part(whole, binary.op.span().byte_range(), other);
                }
            }
            Expr::Unary(unary) if matches!(unary.op, UnOp::Not(_)) => {
                self.part(whole, unary.op.span().byte_range(), "");
            }
            Expr::Lit(literal) => match &literal.lit {
                Lit::Bool(known) => self.note(whole, (!known.value).to_string()),
                Lit::Int(number) => match number.base10_parse::<u64>() {
                    Ok(value) if value <= 100 => {
                        self.note(whole, format!("{}{}", value + 1, number.suffix()));
                    }
                    _ => {}
                },
                _ => {}
            },
            Expr::MethodCall(call) => {
                let name = call.method.to_string();
                if ANSWERS.contains(&&*name) {
                    let start = whole.span().byte_range().start;
                    self.part(whole, start..start, "!");
                }
                let other = METHODS.iter().find_map(|[one, other]| match &*name {
                    name if name == *one => Some(*other),
                    name if name == *other => Some(*one),
                    _ => None,
                });
                if let Some(other) = other {
                    self.part(whole, call.method.span().byte_range(), other);
                }
            }
            _ => {}
        }
    }
}

impl<'ast> Visit<'ast> for Finder<'_> {
    fn visit_expr(&mut self, whole: &'ast Expr) {
        match whole {
            Expr::If(branch) => self.condition(&branch.cond, &["true", "false"]),
            Expr::While(repeated) => self.condition(&repeated.cond, &["false"]),
            _ if self.runs => self.expression(whole),
            _ => {}
        }
        visit::visit_expr(self, whole);
    }

    fn visit_arm(&mut self, arm: &'ast syn::Arm) {
        if let Some((_, guard)) = &arm.guard {
            self.condition(guard, &["true", "false"]);
            self.visit_expr(guard);
        }
        self.visit_expr(&arm.body);
    }

    fn visit_expr_closure(&mut self, closure: &'ast syn::ExprClosure) {
        self.within(None, |this| {
            if !this.runs {
                this.constness = None;
            }
            this.runs = true;
            this.visit_expr(&closure.body);
        });
    }

    fn visit_expr_repeat(&mut self, list: &'ast syn::ExprRepeat) {
        self.visit_expr(&list.expr);
    }

    fn visit_expr_const(&mut self, block: &'ast syn::ExprConst) {
        self.constant(None, |this| visit::visit_expr_const(this, block));
    }

    fn visit_item_const(&mut self, item: &'ast syn::ItemConst) {
        self.constant(Some(item.ident.to_string()), |this| this.visit_expr(&item.expr));
    }

    fn visit_item_static(&mut self, item: &'ast syn::ItemStatic) {
        self.constant(Some(item.ident.to_string()), |this| this.visit_expr(&item.expr));
    }

    fn visit_impl_item_const(&mut self, item: &'ast syn::ImplItemConst) {
        self.constant(Some(item.ident.to_string()), |this| this.visit_expr(&item.expr));
    }

    fn visit_item_fn(&mut self, item: &'ast syn::ItemFn) {
        self.function(&item.attrs, &item.sig, |this| this.visit_block(&item.block));
    }

    fn visit_impl_item_fn(&mut self, item: &'ast syn::ImplItemFn) {
        self.function(&item.attrs, &item.sig, |this| this.visit_block(&item.block));
    }

    fn visit_trait_item_fn(&mut self, item: &'ast syn::TraitItemFn) {
        if let Some(block) = &item.default {
            self.function(&item.attrs, &item.sig, |this| this.visit_block(block));
        }
    }

    fn visit_item_trait(&mut self, item: &'ast syn::ItemTrait) {
        self.within(Some(item.ident.to_string()), |this| visit::visit_item_trait(this, item));
    }

    fn visit_item_impl(&mut self, item: &'ast syn::ItemImpl) {
        let of = item.self_ty.span().byte_range();
        let name = self.text.get(of).unwrap_or_default().to_owned();
        self.within(Some(name), |this| item.items.iter().for_each(|item| this.visit_impl_item(item)));
    }

    fn visit_item_mod(&mut self, module: &'ast syn::ItemMod) {
        if !is_for_tests(&module.attrs) {
            self.within(Some(module.ident.to_string()), |this| visit::visit_item_mod(this, module));
        }
    }

    fn visit_type(&mut self, _: &'ast syn::Type) {}

    fn visit_pat(&mut self, _: &'ast syn::Pat) {}

    fn visit_attribute(&mut self, _: &'ast syn::Attribute) {}

    fn visit_angle_bracketed_generic_arguments(&mut self, _: &'ast syn::AngleBracketedGenericArguments) {}
}
