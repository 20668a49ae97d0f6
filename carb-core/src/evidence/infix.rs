//! Reads the catalogue's formulas: plain infix text, `name = expression`.
//!
//! Numbers, symbols, `+ - * / ^`, brackets, and the functions `exp`, `ln`, `min`, `max`. `^` binds tightest and to
//! the right; a leading minus binds weaker than `^`, as in writing.

use crate::number;
use alloc::boxed::Box;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

/// An expression.
#[derive(Clone, Debug, PartialEq)]
pub enum Expression {
    /// A literal number.
    Number(f64),
    /// A symbol.
    Symbol(String),
    /// A leading minus.
    Negative(Box<Expression>),
    /// One of `+ - * / ^` between two expressions.
    Binary(char, Box<Expression>, Box<Expression>),
    /// A function of one or two arguments.
    Call(String, Vec<Expression>),
}

/// A formula: a name and what it equals.
#[derive(Clone, Debug, PartialEq)]
pub struct Formula {
    /// The left-hand side.
    pub name: String,
    /// The right-hand side.
    pub expression: Expression,
}

struct Reader<'a> {
    text: &'a [u8],
    at: usize,
    depth: usize,
}

/// What is wrong with a formula, and where (in bytes).
pub type Fault = (usize, &'static str);

const DEEPEST: usize = 64;

impl Reader<'_> {
    fn peek(&mut self) -> Option<u8> {
        while self.text.get(self.at).is_some_and(u8::is_ascii_whitespace) {
            self.at += 1;
        }
        self.text.get(self.at).copied()
    }

    fn take(&mut self, wanted: u8) -> bool {
        let found = self.peek() == Some(wanted);
        self.at += usize::from(found);
        found
    }

    fn word(&mut self, accept: impl Fn(u8) -> bool) -> &str {
        let start = self.at;
        while self.text.get(self.at).copied().is_some_and(&accept) {
            self.at += 1;
        }
        core::str::from_utf8(&self.text[start..self.at]).unwrap_or("")
    }

    fn name(&mut self) -> Result<String, Fault> {
        match self.peek() {
            Some(c) if c.is_ascii_alphabetic() => Ok(self.word(|c| c.is_ascii_alphanumeric() || c == b'_').to_string()),
            _ => Err((self.at, "a name is expected here")),
        }
    }

    fn sum(&mut self) -> Result<Expression, Fault> {
        self.depth += 1;
        if self.depth > DEEPEST {
            return Err((self.at, "too deeply nested"));
        }
        let mut left = self.product()?;
        while let Some(sign @ (b'+' | b'-')) = self.peek() {
            self.at += 1;
            left = Expression::Binary(sign as char, Box::new(left), Box::new(self.product()?));
        }
        self.depth -= 1;
        Ok(left)
    }

    fn product(&mut self) -> Result<Expression, Fault> {
        let mut left = self.signed()?;
        while let Some(sign @ (b'*' | b'/')) = self.peek() {
            self.at += 1;
            left = Expression::Binary(sign as char, Box::new(left), Box::new(self.signed()?));
        }
        Ok(left)
    }

    fn signed(&mut self) -> Result<Expression, Fault> {
        if self.take(b'-') {
            return Ok(Expression::Negative(Box::new(self.signed()?)));
        }
        let base = self.atom()?;
        if self.take(b'^') {
            return Ok(Expression::Binary('^', Box::new(base), Box::new(self.signed()?)));
        }
        Ok(base)
    }

    fn atom(&mut self) -> Result<Expression, Fault> {
        match self.peek() {
            Some(b'(') => {
                self.at += 1;
                let inner = self.sum()?;
                if self.take(b')') { Ok(inner) } else { Err((self.at, "a closing bracket is expected here")) }
            }
            Some(c) if c.is_ascii_digit() => self.number(),
            _ => {
                let name = self.name()?;
                if !self.take(b'(') {
                    return Ok(Expression::Symbol(name));
                }
                let mut arguments = Vec::new();
                loop {
                    arguments.push(self.sum()?);
                    if self.take(b')') {
                        return Ok(Expression::Call(name, arguments));
                    }
                    if !self.take(b',') {
                        return Err((self.at, "a comma or a closing bracket is expected here"));
                    }
                }
            }
        }
    }

    fn number(&mut self) -> Result<Expression, Fault> {
        let start = self.at;
        self.word(|c| c.is_ascii_digit() || c == b'.');
        if self.text.get(self.at).is_some_and(|&c| c == b'e') {
            self.at += 1;
            if self.text.get(self.at).is_some_and(|&c| c == b'-' || c == b'+') {
                self.at += 1;
            }
            self.word(|c| c.is_ascii_digit());
        }
        core::str::from_utf8(&self.text[start..self.at])
            .ok()
            .and_then(|text| text.parse().ok())
            .map(Expression::Number)
            .ok_or((start, "this is no number"))
    }
}

impl Formula {
    /// Reads a formula.
    pub fn parse(text: &str) -> Result<Self, Fault> {
        let mut reader = Reader { text: text.as_bytes(), at: 0, depth: 0 };
        let name = reader.name()?;
        if !reader.take(b'=') {
            return Err((reader.at, "an equals sign is expected here"));
        }
        let expression = reader.sum()?;
        match reader.peek() {
            None => Ok(Self { name, expression }),
            Some(_) => Err((reader.at, "the formula should end here")),
        }
    }
}

impl Expression {
    /// The value, given those of the symbols; `None` for an unknown symbol or function.
    pub fn value(&self, symbol: &impl Fn(&str) -> Option<f64>) -> Option<f64> {
        Some(match self {
            Expression::Number(value) => *value,
            Expression::Symbol(name) => symbol(name)?,
            Expression::Negative(inner) => -inner.value(symbol)?,
            Expression::Binary(sign, left, right) => {
                let (a, b) = (left.value(symbol)?, right.value(symbol)?);
                match sign {
                    '+' => a + b,
                    '-' => a - b,
                    '*' => a * b,
                    '/' => a / b,
                    _ => power(a, b),
                }
            }
            Expression::Call(name, arguments) => {
                let values: Option<Vec<f64>> = arguments.iter().map(|a| a.value(symbol)).collect();
                match (name.as_str(), values?.as_slice()) {
                    ("exp", &[x]) => number::exp(x),
                    ("ln", &[x]) => number::ln(x),
                    ("min", &[a, b]) => a.min(b),
                    ("max", &[a, b]) => a.max(b),
                    _ => return None,
                }
            }
        })
    }

    /// The symbols, each once.
    pub fn symbols(&self) -> Vec<&str> {
        let mut found = Vec::new();
        self.collect(&mut found);
        found
    }

    fn collect<'a>(&'a self, found: &mut Vec<&'a str>) {
        match self {
            Expression::Number(_) => {}
            Expression::Symbol(name) if found.contains(&name.as_str()) => {}
            Expression::Symbol(name) => found.push(name),
            Expression::Negative(inner) => inner.collect(found),
            Expression::Binary(_, left, right) => {
                left.collect(found);
                right.collect(found);
            }
            Expression::Call(_, arguments) => arguments.iter().for_each(|a| a.collect(found)),
        }
    }
}

/// Small whole powers are multiplied out, so that negative bases work; others go through `exp` and `ln`.
fn power(base: f64, exponent: f64) -> f64 {
    let whole = exponent as i32;
    if (0..=8).contains(&whole) && f64::from(whole) == exponent {
        return (0..whole).fold(1.0, |product, _| product * base);
    }
    number::pow(base, exponent)
}

/// How strongly an expression binds: sums, products, signs, powers, atoms.
fn binding(expression: &Expression) -> u8 {
    match expression {
        Expression::Binary('+' | '-', ..) => 0,
        Expression::Binary('*' | '/', ..) => 1,
        Expression::Negative(_) => 2,
        Expression::Binary(..) => 3,
        // A power of ten is a product.
        Expression::Number(value) if decimal(*value).is_none() => 1,
        _ => 4,
    }
}

/// A number as a plain decimal, unless it is too small or too large to be read.
fn decimal(value: f64) -> Option<String> {
    let plain = value == 0.0 || (1e-4..1e7).contains(&value.abs());
    plain.then(|| value.to_string())
}

fn bracketed(expression: &Expression, least: u8) -> String {
    let text = expression.latex();
    if binding(expression) < least { alloc::format!("\\left({text}\\right)") } else { text }
}

/// A symbol as it is set: one letter, the rest as its index.
pub fn latex_symbol(name: &str) -> String {
    match name {
        "rho" | "phi" => return alloc::format!("\\{name}"),
        _ => {}
    }
    let mut letters = name.chars();
    let first: String = letters.next().into_iter().collect();
    match letters.as_str() {
        "" => first,
        index => alloc::format!("{first}_{{\\mathrm{{{index}}}}}"),
    }
}

impl Expression {
    /// Whether this is a chain of products and quotients by plain factors, which reads best as one fraction.
    fn is_plain_chain(&self) -> bool {
        match self {
            Expression::Binary('*' | '/', left, right) => {
                matches!(**right, Expression::Number(_) | Expression::Symbol(_)) && left.is_plain_chain()
            }
            // What the chain begins with may be anything.
            _ => true,
        }
    }

    /// The factors of a chain, above and below the line.
    fn chain<'a>(&'a self, above: &mut Vec<&'a Expression>, below: &mut Vec<&'a Expression>) {
        match self {
            Expression::Binary('*', left, right) => {
                left.chain(above, below);
                above.push(right);
            }
            Expression::Binary('/', left, right) => {
                left.chain(above, below);
                below.push(right);
            }
            first => above.push(first),
        }
    }

    /// The expression in LaTeX.
    pub fn latex(&self) -> String {
        use alloc::format;
        match self {
            Expression::Number(value) => decimal(*value).unwrap_or_else(|| {
                let scientific = format!("{value:e}");
                let (digits, exponent) = scientific.split_once('e').unwrap_or((&scientific, "0"));
                match digits {
                    "1" => format!("10^{{{exponent}}}"),
                    _ => format!("{digits} \\times 10^{{{exponent}}}"),
                }
            }),
            Expression::Symbol(name) => latex_symbol(name),
            Expression::Negative(inner) => format!("-{}", bracketed(inner, 2)),
            Expression::Binary('/', ..) if self.is_plain_chain() => {
                let (mut above, mut below) = (Vec::new(), Vec::new());
                self.chain(&mut above, &mut below);
                let product = |factors: Vec<&Expression>| {
                    let set: Vec<String> = match factors.as_slice() {
                        [one] => alloc::vec![one.latex()],
                        more => more.iter().map(|factor| bracketed(factor, 1)).collect(),
                    };
                    set.join(" \\cdot ")
                };
                format!("\\frac{{{}}}{{{}}}", product(above), product(below))
            }
            Expression::Binary('/', above, below) => format!("\\frac{{{}}}{{{}}}", above.latex(), below.latex()),
            Expression::Binary('^', base, power) => format!("{}^{{{}}}", bracketed(base, 4), power.latex()),
            Expression::Binary('*', left, right) => {
                format!("{} \\cdot {}", bracketed(left, 1), bracketed(right, 1))
            }
            Expression::Binary('-', left, right) => format!("{} - {}", left.latex(), bracketed(right, 1)),
            Expression::Binary(sign, left, right) => format!("{} {sign} {}", left.latex(), right.latex()),
            Expression::Call(name, arguments) => {
                let inner: Vec<String> = arguments.iter().map(Expression::latex).collect();
                format!("\\{name}\\left({}\\right)", inner.join(", "))
            }
        }
    }
}

impl Formula {
    /// The formula in LaTeX.
    pub fn latex(&self) -> String {
        alloc::format!("{} = {}", latex_symbol(&self.name), self.expression.latex())
    }
}

impl Expression {
    /// The expression in the grammar of worksheets, every symbol as `cell` has it.
    ///
    /// There a leading minus binds tighter than `^` (`-2^2` is 4), and `^` binds to the left: signs and powers get their
    /// brackets whether they need them or not. What stands to the right keeps its brackets too, so that all is worked out in
    /// the order of the formula. Numbers are plain decimals with all their digits.
    pub fn worksheet(&self, cell: &impl Fn(&str) -> String) -> String {
        let bracketed = |inner: &Expression, least: u8| {
            let text = inner.worksheet(cell);
            let plain = matches!(inner, Expression::Number(value) if *value >= 0.0);
            if plain || binding(inner) >= least { text } else { alloc::format!("({text})") }
        };
        match self {
            Expression::Number(value) => value.to_string(),
            Expression::Symbol(name) => cell(name),
            Expression::Negative(inner) => alloc::format!("-{}", bracketed(inner, 4)),
            Expression::Binary(sign, left, right) => {
                // A leading minus may stand first in a sum, nowhere else.
                let (before, behind) = match sign {
                    '+' | '-' => (0, 1),
                    '*' | '/' => (1, 3),
                    _ => (4, 4),
                };
                let signed = matches!(**left, Expression::Negative(_)) && before > 0;
                let before = if signed { 4 } else { before };
                let behind = if matches!(**right, Expression::Negative(_)) { 4 } else { behind };
                alloc::format!("{}{sign}{}", bracketed(left, before), bracketed(right, behind))
            }
            Expression::Call(name, arguments) => {
                let inner: Vec<String> = arguments.iter().map(|argument| argument.worksheet(cell)).collect();
                alloc::format!("{}({})", name.to_uppercase(), inner.join(","))
            }
        }
    }

    /// How often a symbol stands in it.
    fn count(&self, name: &str) -> usize {
        match self {
            Expression::Number(_) => 0,
            Expression::Symbol(own) => usize::from(own == name),
            Expression::Negative(inner) => inner.count(name),
            Expression::Binary(_, left, right) => left.count(name) + right.count(name),
            Expression::Call(_, arguments) => arguments.iter().map(|argument| argument.count(name)).sum(),
        }
    }
}

impl Formula {
    /// The right-hand side in the grammar of worksheets, every symbol as `cell` has it.
    pub fn worksheet(&self, cell: &impl Fn(&str) -> String) -> String {
        self.expression.worksheet(cell)
    }

    /// The formula turned round for a symbol that stands in it once, in nothing but sums, products, quotients, signs and
    /// exponentials; `None` for any other.
    pub fn solved_for(&self, symbol: &str) -> Option<Formula> {
        if self.expression.count(symbol) != 1 {
            return None;
        }
        let pair = |sign, left: Expression, right: &Expression| {
            Expression::Binary(sign, Box::new(left), Box::new(right.clone()))
        };
        let mut known = Expression::Symbol(self.name.clone());
        let mut rest = &self.expression;
        loop {
            (known, rest) = match rest {
                Expression::Symbol(_) => return Some(Formula { name: symbol.to_string(), expression: known }),
                Expression::Negative(inner) => (Expression::Negative(Box::new(known)), &**inner),
                Expression::Binary(sign, left, right) if left.count(symbol) == 1 => match sign {
                    '+' => (pair('-', known, right), &**left),
                    '-' => (pair('+', known, right), &**left),
                    '*' => (pair('/', known, right), &**left),
                    '/' => (pair('*', known, right), &**left),
                    _ => return None,
                },
                Expression::Binary(sign, left, right) => match sign {
                    '+' => (pair('-', known, left), &**right),
                    '-' => (pair('-', (**left).clone(), &known), &**right),
                    '*' => (pair('/', known, left), &**right),
                    '/' => (pair('/', (**left).clone(), &known), &**right),
                    _ => return None,
                },
                Expression::Call(name, arguments) => match (name.as_str(), arguments.as_slice()) {
                    ("exp", [inner]) => (Expression::Call("ln".to_string(), alloc::vec![known]), inner),
                    ("ln", [inner]) => (Expression::Call("exp".to_string(), alloc::vec![known]), inner),
                    _ => return None,
                },
                Expression::Number(_) => return None,
            };
        }
    }
}

#[cfg(test)]
mod test {
    use super::{Formula, String, ToString};

    fn worksheet(text: &str) -> String {
        Formula::parse(text).expect("a formula").worksheet(&|name| name.to_string())
    }

    #[test]
    fn a_worksheet_reads_what_the_formula_says() {
        for (formula, written) in [
            ("y = -2^2", "-(2^2)"),
            ("y = 2^3^2", "2^(3^2)"),
            ("y = (2^3)^2", "(2^3)^2"),
            ("y = 2^-1", "2^(-1)"),
            ("y = (-2)^2", "(-2)^2"),
            ("y = a - -b", "a-(-b)"),
            ("y = a*-b/c", "a*(-b)/c"),
            ("y = -a*b", "(-a)*b"),
            ("y = -a + b", "-a+b"),
            ("y = -(a + b)", "-(a+b)"),
            ("y = a - (b - c)", "a-(b-c)"),
            ("y = a + (b + c)", "a+(b+c)"),
            ("y = a/(b*c)", "a/(b*c)"),
            ("y = a*b/c", "a*b/c"),
            ("y = a*b^2", "a*b^2"),
            ("y = exp(-a)*max(0, min(b, 1))", "EXP(-a)*MAX(0,MIN(b,1))"),
            ("y = ln(a)/0.00000000028054253", "LN(a)/0.00000000028054253"),
            ("y = 1e-20*a", "0.00000000000000000001*a"),
        ] {
            assert_eq!(worksheet(formula), written, "{formula}");
        }
    }

    #[test]
    fn a_formula_is_turned_round_for_what_stands_in_it_once() {
        let values = |name: &str| Some(if name == "a" { 1.75 } else { 0.6 });
        for text in
            ["y = 2*(a*b - 3)", "y = b - a", "y = b/a", "y = b/(2 - exp(-a))", "y = ln(b + a)/b", "y = -a/b + 4"]
        {
            let formula = Formula::parse(text).expect("a formula");
            let y = formula.expression.value(&values).expect("a number");
            let turned = formula.solved_for("a").expect("it can be turned round");
            let again = turned.expression.value(&|name| if name == "y" { Some(y) } else { values(name) });
            assert!(again.is_some_and(|a| (a - 1.75).abs() < 1e-14), "{text}: {again:?}");
        }
        for text in ["y = a*a", "y = a^2", "y = b", "y = max(a, 0)"] {
            assert_eq!(Formula::parse(text).expect("a formula").solved_for("a"), None, "{text}");
        }
    }
}
