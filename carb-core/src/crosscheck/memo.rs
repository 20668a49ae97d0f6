//! What depends on a few questions only is worked out once for each set of their habits.

use super::question::{Choice, Question};
use alloc::vec;
use alloc::vec::Vec;
use core::cell::RefCell;

/// A value for each set of habits of some questions, found when it is first asked for.
#[derive(Debug)]
pub(super) struct Memo<T> {
    /// The questions, and how many habits each has.
    questions: Vec<(Question, usize)>,
    known: RefCell<Vec<Option<T>>>,
}

impl<T: Copy> Memo<T> {
    /// Nothing known yet of what depends on these questions.
    pub fn of(questions: Vec<Question>) -> Self {
        let questions: Vec<_> = questions.into_iter().map(|q| (q, q.matter().habits.len())).collect();
        let size = questions.iter().map(|(_, count)| count).product();
        Self { questions, known: RefCell::new(vec![None; size]) }
    }

    /// The value for a choice.
    #[inline]
    pub fn get(&self, choice: &Choice, find: impl FnOnce() -> T) -> T {
        let place =
            self.questions.iter().fold(0, |place, &(q, count)| place * count + choice.at(q).unwrap_or_default());
        if let Some(known) = self.known.borrow()[place] {
            return known;
        }
        let found = find();
        self.known.borrow_mut()[place] = Some(found);
        found
    }
}
