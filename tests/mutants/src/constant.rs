//! What the compiler may evaluate: a place there cannot ask which mutant runs.

use proc_macro2::{TokenStream, TokenTree};
use std::collections::BTreeSet;
use syn::visit::{self, Visit};

/// The names that are used in constants, statics, const functions and declaring macros of some files. A const function of such
/// a name stays one; any other may become an ordinary function in the copy.
pub fn names<'f>(files: impl Iterator<Item = &'f syn::File>) -> BTreeSet<String> {
    let mut used = Used { names: BTreeSet::new(), is_constant: false };
    for file in files {
        used.visit_file(file);
    }
    used.names
}

struct Used {
    names: BTreeSet<String>,
    is_constant: bool,
}

impl Used {
    fn within(&mut self, is_constant: bool, visit: impl FnOnce(&mut Self)) {
        let outside = std::mem::replace(&mut self.is_constant, is_constant);
        visit(self);
        self.is_constant = outside;
    }

    fn take_words(&mut self, tokens: TokenStream) {
        for token in tokens {
            match token {
                TokenTree::Ident(word) => _ = self.names.insert(word.to_string()),
                TokenTree::Group(group) => self.take_words(group.stream()),
                TokenTree::Punct(_) | TokenTree::Literal(_) => {}
            }
        }
    }
}

impl<'ast> Visit<'ast> for Used {
    fn visit_item_const(&mut self, item: &'ast syn::ItemConst) {
        self.within(true, |this| visit::visit_item_const(this, item));
    }

    fn visit_item_static(&mut self, item: &'ast syn::ItemStatic) {
        self.within(true, |this| visit::visit_item_static(this, item));
    }

    fn visit_impl_item_const(&mut self, item: &'ast syn::ImplItemConst) {
        self.within(true, |this| visit::visit_impl_item_const(this, item));
    }

    fn visit_trait_item_const(&mut self, item: &'ast syn::TraitItemConst) {
        self.within(true, |this| visit::visit_trait_item_const(this, item));
    }

    fn visit_expr_const(&mut self, block: &'ast syn::ExprConst) {
        self.within(true, |this| visit::visit_expr_const(this, block));
    }

    fn visit_type_array(&mut self, array: &'ast syn::TypeArray) {
        self.within(true, |this| visit::visit_type_array(this, array));
    }

    fn visit_expr_repeat(&mut self, list: &'ast syn::ExprRepeat) {
        self.visit_expr(&list.expr);
        self.within(true, |this| this.visit_expr(&list.len));
    }

    fn visit_item_fn(&mut self, item: &'ast syn::ItemFn) {
        self.within(item.sig.constness.is_some(), |this| visit::visit_item_fn(this, item));
    }

    fn visit_impl_item_fn(&mut self, item: &'ast syn::ImplItemFn) {
        self.within(item.sig.constness.is_some(), |this| visit::visit_impl_item_fn(this, item));
    }

    fn visit_expr_closure(&mut self, closure: &'ast syn::ExprClosure) {
        self.within(false, |this| visit::visit_expr_closure(this, closure));
    }

    fn visit_expr_call(&mut self, call: &'ast syn::ExprCall) {
        if let (true, syn::Expr::Path(called)) = (self.is_constant, &*call.func)
            && let Some(last) = called.path.segments.last()
        {
            self.names.insert(last.ident.to_string());
        }
        visit::visit_expr_call(self, call);
    }

    fn visit_expr_method_call(&mut self, call: &'ast syn::ExprMethodCall) {
        if self.is_constant {
            self.names.insert(call.method.to_string());
        }
        visit::visit_expr_method_call(self, call);
    }

    fn visit_item_macro(&mut self, item: &'ast syn::ItemMacro) {
        self.take_words(item.mac.tokens.clone());
    }

    fn visit_macro(&mut self, call: &'ast syn::Macro) {
        if self.is_constant {
            self.take_words(call.tokens.clone());
        }
    }
}
