//! Tests of the whole without a window, in one binary.

#[cfg(test)]
mod layout;
#[cfg(test)]
mod words;
