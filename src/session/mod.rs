//! The boundary between the model and the front ends.

pub mod view;
