//! Spanish speaks to the reader as “usted”: no word of a message or a drill's text says “tú”.
//!
//! Judged by words that can be nothing else: pronouns, verbs in the second person, and commands at the head of a sentence.
//! Forms that “él” shares, such as “abre” in the middle of a sentence, are for people to judge.

use std::collections::BTreeSet;

use outage_drill::words::word_files;

use super::plain::sentences;

/// Pronouns and verbs that address a “tú”, wherever they stand.
const WORDS: [&str; 50] = [
    "tu",
    "tus",
    "tú",
    "te",
    "ti",
    "contigo",
    "tuyo",
    "tuya",
    "tuyos",
    "tuyas",
    "vosotros",
    "os",
    "eres",
    "estás",
    "tienes",
    "puedes",
    "debes",
    "quieres",
    "sabes",
    "haces",
    "necesitas",
    "ves",
    "dices",
    "crees",
    "vas",
    "pones",
    "miras",
    "mides",
    "apagas",
    "enciendes",
    "abres",
    "cierras",
    "conectas",
    "esperas",
    "llamas",
    "tocas",
    "dejas",
    "usas",
    "vuelves",
    "sigues",
    "hiciste",
    "dijiste",
    "viste",
    "fuiste",
    "estuviste",
    "pusiste",
    "tuviste",
    "haz",
    "pon",
    "ponte",
];

/// Commands to a “tú”, which at the head of a sentence our texts use for nothing else.
const HEADS: [&str; 23] = [
    "apaga",
    "apunta",
    "busca",
    "cierra",
    "conecta",
    "desconecta",
    "desenchufa",
    "elige",
    "enciende",
    "enchufa",
    "escribe",
    "guarda",
    "lee",
    "llama",
    "mira",
    "mueve",
    "oprime",
    "pulsa",
    "presiona",
    "quita",
    "repara",
    "saca",
    "ten",
];

/// Words of a text in small letters.
fn words_of(text: &str) -> impl Iterator<Item = String> + '_ {
    let words = text.split(|c: char| !c.is_alphabetic());
    words.filter(|w| !w.is_empty()).map(str::to_lowercase)
}

/// What in a text says “tú”.
fn familiar(text: &str) -> BTreeSet<String> {
    let heads = sentences(text).into_iter();
    let heads = heads.flat_map(|sentence| sentence.split(['¿', '¡', '“', '«']));
    let heads = heads.filter_map(|part| words_of(part).next());
    let heads = heads.filter(|word| HEADS.contains(&word.as_str()));
    let words = words_of(text).filter(|word| WORDS.contains(&word.as_str()));
    words.chain(heads).collect()
}

/// What a line of a word file says: without its id, its arguments and the marks of its variants.
fn said(line: &str) -> String {
    if line.starts_with('#') {
        return String::new();
    }
    let own = line.starts_with(|c: char| c.is_alphabetic());
    let text = match line.split_once(" = ") {
        Some((_, text)) if own => text,
        _ => line,
    };
    let mut kept = String::new();
    let mut inside = false;
    for letter in text.chars() {
        match letter {
            '{' | '[' => inside = true,
            '}' | ']' => inside = false,
            other if !inside => kept.push(other),
            _ => {}
        }
    }
    kept
}

#[test]
fn spanish_speaks_to_the_reader_as_usted_throughout() {
    let mut n_lines = 0;
    for file in word_files("es") {
        for (line, number) in file.text.lines().zip(1..) {
            let found = familiar(&said(line));
            assert!(found.is_empty(), "{}:{number}: {found:?}", file.name);
            n_lines += 1;
        }
    }
    assert!(n_lines > 3000, "{n_lines}");
}

#[test]
fn a_text_that_says_tu_is_seen() {
    assert_eq!(familiar("Apaga tu motor. ¿Puedes esperar?").len(), 3);
    assert!(familiar("Apague su motor. El interruptor se abre.").is_empty());
}
