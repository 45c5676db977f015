//! General engines that do the bare sum of the same box: six products, a sum, one comparison. Each is compiled beforehand
//! and has its variables set, which is more than fair.

use std::collections::BTreeMap;
use std::hint::black_box;

/// What the box holds, as variables: how many allowances, and the volume of one.
const SUM: &str = "c12 * v12 + c14 * v14 + clamps * v12 + d14 * v14 + d12 * v12 + grounding * v12 <= volume";
const VARIABLES: [(&str, f64); 9] = [
    ("c12", 2.0),
    ("c14", 3.0),
    ("clamps", 1.0),
    ("d12", 2.0),
    ("d14", 2.0),
    ("grounding", 1.0),
    ("v12", 2.25),
    ("v14", 2.0),
    ("volume", 24.5),
];

pub fn zen() -> Box<dyn FnMut()> {
    let expression = zen_expression::compile_expression(SUM).expect("the sum compiles");
    let variables: BTreeMap<&str, f64> = VARIABLES.into_iter().collect();
    let context: zen_expression::Variable = serde_json::json!(variables).into();
    let mut machine = zen_expression::vm::VM::new();
    let mut run = move || {
        expression.evaluate_with(black_box(context.clone()), &mut machine).expect("the sum is done")
    };
    assert!(matches!(run(), zen_expression::Variable::Bool(true)));
    Box::new(move || drop(black_box(run())))
}

pub fn rhai() -> Box<dyn FnMut()> {
    let engine = rhai::Engine::new();
    let mut scope = rhai::Scope::new();
    for (name, value) in VARIABLES {
        scope.push(name, value);
    }
    let sum = engine.compile_expression(SUM).expect("the sum compiles");
    let mut run =
        move || engine.eval_ast_with_scope::<bool>(black_box(&mut scope), &sum).expect("the sum is done");
    assert!(run());
    Box::new(move || {
        black_box(run());
    })
}

pub fn cel() -> Box<dyn FnMut()> {
    let program = cel_interpreter::Program::compile(SUM).expect("the sum compiles");
    let mut context = cel_interpreter::Context::default();
    for (name, value) in VARIABLES {
        context.add_variable_from_value(name, value);
    }
    let run = move || program.execute(black_box(&context)).expect("the sum is done");
    assert!(matches!(run(), cel_interpreter::Value::Bool(true)));
    Box::new(move || drop(black_box(run())))
}
