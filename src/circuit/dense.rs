//! Inverse of a small dense complex matrix: impedance matrices of coupled conductors and windings.
//!
//! Gauss-Jordan with the largest pivot of the column; meant for up to some ten rows, once per element.

use crate::units::Complex;

/// The inverse of `matrix` with `n` rows, row by row; none if its size is wrong or it is singular to working accuracy.
pub(super) fn invert(matrix: &[Complex], n: usize) -> Option<Vec<Complex>> {
    if matrix.len() != n * n || matrix.iter().any(|c| !c.is_finite()) {
        return None;
    }
    let mut a = matrix.to_vec();
    let mut inverse = vec![Complex::ZERO; n * n];
    for i in 0..n {
        inverse[i * n + i] = Complex::ONE;
    }
    let largest = a.iter().map(Complex::norm_sqr).fold(0.0, f64::max);
    for column in 0..n {
        let pivot = (column..n).max_by(|&p, &q| {
            a[p * n + column]
                .norm_sqr()
                .total_cmp(&a[q * n + column].norm_sqr())
        })?;
        if a[pivot * n + column].norm_sqr() <= largest * 1e-26 {
            return None;
        }
        for k in 0..n {
            a.swap(pivot * n + k, column * n + k);
            inverse.swap(pivot * n + k, column * n + k);
        }
        let scale = a[column * n + column].inv();
        for k in 0..n {
            a[column * n + k] *= scale;
            inverse[column * n + k] *= scale;
        }
        for row in (0..n).filter(|&row| row != column) {
            let factor = a[row * n + column];
            for k in 0..n {
                let (from_a, from_inverse) = (a[column * n + k], inverse[column * n + k]);
                a[row * n + k] -= factor * from_a;
                inverse[row * n + k] -= factor * from_inverse;
            }
        }
    }
    // the matrices inverted here are symmetric: make the answer so to the last bit
    for i in 0..n {
        for j in 0..i {
            let mean = (inverse[i * n + j] + inverse[j * n + i]) * 0.5;
            inverse[i * n + j] = mean;
            inverse[j * n + i] = mean;
        }
    }
    Some(inverse)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_matrix_times_its_inverse_is_one() {
        let c = Complex::new;
        let z = [c(0.4, 1.4), c(0.1, 0.6), c(0.1, 0.6), c(0.4, 1.3)];
        let y = invert(&z, 2).unwrap();
        for i in 0..2 {
            for j in 0..2 {
                let sum = z[i * 2] * y[j] + z[i * 2 + 1] * y[2 + j];
                let wanted = if i == j { Complex::ONE } else { Complex::ZERO };
                assert!((sum - wanted).norm_sqr() < 1e-28, "{i} {j}: {sum}");
            }
        }
    }

    #[test]
    fn a_singular_matrix_has_no_inverse() {
        assert_eq!(invert(&[Complex::ONE; 4], 2), None);
        assert_eq!(invert(&[Complex::ONE; 3], 2), None);
    }
}
