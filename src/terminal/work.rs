//! Work shared among threads: which thread does what never shows in what comes out, nor in its order.

use std::cell::Cell;
use std::sync::Mutex;
use std::sync::PoisonError;
use std::sync::atomic::{AtomicUsize, Ordering};
use std::sync::mpsc;
use std::thread;
use std::time::{Duration, Instant};

/// Time between two words of how far it has come.
const EVERY: Duration = Duration::from_secs(5);

/// How far the work has come.
#[derive(Debug, Clone, Copy)]
pub(super) struct Progress {
    /// Pieces that are done.
    pub(super) done: usize,
    /// States that searches have met so far.
    pub(super) states: usize,
}

/// The clock on the wall, for saying how long something took.
#[expect(
    clippy::disallowed_methods,
    reason = "told beside what was done, never read by it"
)]
pub(super) fn now() -> Instant {
    Instant::now()
}

/// How many threads the machine has cores for.
pub(super) fn cores() -> usize {
    thread::available_parallelism().map_or(1, usize::from)
}

/// Does `n` pieces of work on so many threads, and gives what came of each in order.
/// `progress` is told every few seconds how far it has come.
pub(super) fn share<T: Send>(
    n: usize,
    n_threads: usize,
    work: impl Fn(usize, &dyn Fn(usize)) -> T + Sync,
    mut progress: impl FnMut(Progress),
) -> Vec<T> {
    let (next, states) = (AtomicUsize::new(0), AtomicUsize::new(0));
    let results: Mutex<Vec<Option<T>>> = Mutex::new((0..n).map(|_| None).collect());
    let (done, all_done) = mpsc::channel();
    thread::scope(|scope| {
        for _ in 0..n_threads.clamp(1, n.max(1)) {
            let done = done.clone();
            let (next, states, results, work) = (&next, &states, &results, &work);
            scope.spawn(move || {
                loop {
                    let index = next.fetch_add(1, Ordering::Relaxed);
                    if index >= n {
                        break;
                    }
                    let result = work(index, &counter(states));
                    let mut results = results.lock().unwrap_or_else(PoisonError::into_inner);
                    if let Some(slot) = results.get_mut(index) {
                        *slot = Some(result);
                    }
                    drop(results);
                    if done.send(()).is_err() {
                        break;
                    }
                }
            });
        }
        drop(done);
        let mut n_done = 0;
        loop {
            match all_done.recv_timeout(EVERY) {
                Ok(()) => n_done += 1,
                Err(mpsc::RecvTimeoutError::Timeout) => progress(Progress {
                    done: n_done,
                    states: states.load(Ordering::Relaxed),
                }),
                Err(mpsc::RecvTimeoutError::Disconnected) => break,
            }
        }
    });
    let results = results.into_inner().unwrap_or_else(PoisonError::into_inner);
    results.into_iter().flatten().collect()
}

/// Adds what one search after the other has met to what all have met.
fn counter(states: &AtomicUsize) -> impl Fn(usize) {
    let last = Cell::new(0);
    move |met: usize| {
        let before = if met < last.get() { 0 } else { last.get() };
        states.fetch_add(met - before, Ordering::Relaxed);
        last.set(met);
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_comes_out_does_not_hang_on_the_number_of_threads() {
        let squares: Vec<usize> = (0..100).map(|i| i * i).collect();
        for n_threads in [1, 2, 7] {
            let work = |i: usize, met: &dyn Fn(usize)| {
                met(i);
                i * i
            };
            assert_eq!(share(100, n_threads, work, |_| {}), squares);
        }
    }

    #[test]
    fn the_searches_of_a_piece_of_work_are_added_up() {
        let states = AtomicUsize::new(0);
        let met = counter(&states);
        for n in [10, 30, 5, 9] {
            met(n);
        }
        assert_eq!(states.load(Ordering::Relaxed), 39);
    }
}
