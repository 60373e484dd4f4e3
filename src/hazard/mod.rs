//! People and air: what a touch, a gas or a distance does to somebody.
//!
//! Pure models: numbers in, numbers out.
//! They judge exposure by published limits and never predict what happens to one person: bodies differ by a factor of two and more.
//! Whatever changes with time has a closed form.

pub mod body;
pub mod let_go;
pub mod shock;
pub mod step_touch;

pub mod approach;
pub mod tester;

pub mod air;
pub mod blood;
pub mod emission;
pub mod monoxide;

pub mod fuel_vapor;
