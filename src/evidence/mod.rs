//! What the program is held against: published figures, each beside what ours gives, and the mistakes that its drills must show.
//!
//! A row is compared with the real function; nothing here knows an answer of its own.
//! A row may say that ours differs, by how much and why; then it is the difference that is held, and a difference that heals is a fault too.
//! Rows that follow from one formula name it, and are counted once.
//! Whether the marking of a whole drill is right is for the second judge among the tests.

pub mod mistakes;
pub mod networks;
mod published;
mod row;
mod section;

pub use networks::networks;
pub use published::compare;
pub use published::published;
pub use row::{Compared, Difference, Judgement, Standing, Tolerance};
pub use section::{Section, Total, total, totals};
