//! Tests of the whole without a window, in one binary.

#[cfg(test)]
mod circuit_networks;
#[cfg(test)]
mod circuit_split_phase;
#[cfg(test)]
mod layout;
#[cfg(test)]
mod published;
#[cfg(test)]
mod words;
