//! A set of numbers that remembers in which order they came in: open addressing over one array of indices.
//!
//! The slots are found by a fixed multiplication, so the order of everything is the same on every machine; no random state is in it.
//! Eight bytes a number and some six to twelve a slot; it covers at most 2^32 - 1 numbers.

/// Multipliers of the finalizer of the `splitmix64` generator (Steele, Lea and Flood, 2014; from memory): neighbors in the bits of a state land far apart.
const MIX: [u64; 2] = [0xbf58_476d_1ce4_e5b9, 0x94d0_49bb_1331_11eb];
/// Slots at the beginning, as a power of two.
const FIRST_BITS: u32 = 10;
/// A slot that nothing is in.
const EMPTY: u32 = u32::MAX;

/// Numbers in the order in which they were first put in.
#[derive(Debug, Clone)]
pub(super) struct Table {
    keys: Vec<u64>,
    slots: Vec<u32>,
    bits: u32,
}

impl Table {
    pub(super) fn new() -> Self {
        Self {
            keys: Vec::new(),
            slots: vec![EMPTY; 1 << FIRST_BITS],
            bits: FIRST_BITS,
        }
    }

    /// The numbers, in the order in which they came in.
    pub(super) fn keys(&self) -> &[u64] {
        &self.keys
    }

    /// Puts a number in; its index, and whether it is new.
    pub(super) fn insert(&mut self, key: u64) -> (u32, bool) {
        if 3 * self.keys.len() >= 2 * self.slots.len() {
            self.grow();
        }
        let slot = self.slot_of(key);
        match self.slots.get_mut(slot) {
            Some(index) if *index == EMPTY => {
                *index = u32::try_from(self.keys.len()).unwrap_or(EMPTY);
                let new = *index;
                self.keys.push(key);
                (new, true)
            }
            index => (index.map_or(EMPTY, |i| *i), false),
        }
    }

    /// Bytes that it takes.
    pub(super) fn bytes(&self) -> usize {
        self.keys.capacity() * size_of::<u64>() + self.slots.len() * size_of::<u32>()
    }

    /// The slot that a number is in, or the empty one where it would go.
    fn slot_of(&self, key: u64) -> usize {
        let mask = self.slots.len() - 1;
        let [first, second] = MIX;
        let mixed = (key ^ (key >> 30)).wrapping_mul(first);
        let mixed = (mixed ^ (mixed >> 27)).wrapping_mul(second);
        let high = (mixed ^ (mixed >> 31)) >> (u64::BITS - self.bits);
        let mut slot = usize::try_from(high).unwrap_or_default() & mask;
        while let Some(index) = self.slots.get(slot) {
            let there = usize::try_from(*index).ok().and_then(|i| self.keys.get(i));
            if *index == EMPTY || there == Some(&key) {
                break;
            }
            slot = (slot + 1) & mask;
        }
        slot
    }

    fn grow(&mut self) {
        self.bits += 1;
        self.slots = vec![EMPTY; 1 << self.bits];
        for (index, key) in (0..).zip(self.keys.clone()) {
            let slot = self.slot_of(key);
            if let Some(empty) = self.slots.get_mut(slot) {
                *empty = index;
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_number_keeps_the_index_it_came_in_with() {
        let mut table = Table::new();
        let numbers: Vec<u64> = (0..5000).map(|i: u64| i * i * 977 + 3).collect();
        for (index, number) in (0..).zip(&numbers) {
            assert_eq!(table.insert(*number), (index, true));
        }
        for (index, number) in (0..).zip(&numbers) {
            assert_eq!(table.insert(*number), (index, false));
        }
        assert_eq!(table.keys(), numbers);
    }
}
