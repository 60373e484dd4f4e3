//! A curve over the drill with the limit it is held to, drawn by the plotting library under the strips of the timeline.
//!
//! Time runs as in those: the way that one reads.
//! Resting the pointer on it reads time and value; all plots show the same moment.
//! It shows the stretch of the drill that the timeline shows; it does not cover more than one curve in a plot.

use std::ops::RangeInclusive;

use bevy_egui::egui::{Sense, Shape, Stroke, Ui, Vec2b, vec2};
use egui_plot::{
    AxisHints, GridInput, GridMark, HLine, HoverPosition, Line, LineStyle, Plot, PlotPoints,
};

use crate::session::view::SeriesView;
use crate::window::fonts;
use crate::window::theme;
use crate::words::Numbers;

use super::span::Span;
use super::subheading;
use super::timeline::{LABEL, MARGIN};

const HEIGHT: f32 = 128.0;
/// Room above the highest value, as a share of it.
const HEADROOM: f64 = 0.12;

/// One curve.
pub(crate) fn panel(ui: &mut Ui, view: &SeriesView, span: Span) {
    let name = format!("{}, {}", view.label, view.unit);
    subheading(ui, &name);
    let values = view.points.iter().map(|(_, value)| *value);
    let high = values.chain(view.limit).fold(0.0, f64::max);
    let top = if high > 0.0 {
        high * (1.0 + HEADROOM)
    } else {
        1.0
    };
    let width = ui.available_width() - MARGIN;
    let minute = f64::from(span.second_step(width - LABEL)) / 60.0;
    let unit = value_step(high);
    let look = |axis: AxisHints<'static>| {
        axis.label_spacing(0.0..=1.0)
            .tick_label_color(theme::MUTED.egui())
            .tick_label_font(fonts::regular(12.0))
    };
    let curve = name.clone();
    let (scale, pointed) = (view.numbers.clone(), view.numbers.clone());
    Plot::new(&view.name)
        .height(HEIGHT)
        .width(width)
        // Nothing is kept from the drill before.
        .reset()
        .allow_zoom(false)
        .allow_scroll(false)
        .allow_drag(false)
        .allow_boxed_zoom(false)
        .allow_double_click_reset(false)
        .show_grid(Vec2b::new(true, false))
        .link_cursor("curves", Vec2b::new(true, false))
        .default_x_bounds(minutes(span.from_ms), minutes(span.to_ms))
        .default_y_bounds(0.0, top)
        .x_grid_spacer(move |input| marks(&input, minute))
        .y_grid_spacer(move |input| marks(&input, unit))
        .custom_x_axes(vec![look(AxisHints::new_x()).formatter(moment)])
        .custom_y_axes(vec![
            look(AxisHints::new_y())
                .min_thickness(LABEL)
                .formatter(move |mark, _| scale.whole(mark.value)),
        ])
        .label_formatter(move |at| read(at, &name, &pointed))
        .show(ui, |plot| {
            if let Some(limit) = view.limit {
                plot.hline(
                    HLine::new(&view.limit_label, limit)
                        .color(theme::YELLOW.egui())
                        .width(2.0)
                        .style(LineStyle::dashed_loose()),
                );
            }
            let points: PlotPoints<'_> = view
                .points
                .iter()
                .map(|(second, value)| [minutes(*second * 1_000), *value])
                .collect();
            plot.line(
                Line::new(curve, points)
                    .color(theme::curve_ink(view.of).egui())
                    .width(2.2),
            );
        });
    if let Some(value) = view.limit {
        let value = view.numbers.whole(value);
        let value = format!("{}: {value} {}", view.limit_label, view.unit);
        limit(ui, &value);
    }
}

/// The name of the limit, behind a sample of its line.
fn limit(ui: &mut Ui, label: &str) {
    ui.horizontal(|ui| {
        ui.add_space(LABEL);
        let (sample, _) = ui.allocate_exact_size(vec2(32.0, 14.0), Sense::hover());
        let ends = [sample.left_center(), sample.right_center()];
        let stroke = Stroke::new(2.0, theme::YELLOW.egui());
        let dashes = Shape::dashed_line(&ends, stroke, 8.0, 4.0);
        ui.painter().extend(dashes);
        super::aside(ui, label);
    });
}

/// What is under the pointer: the curve's or the limit's name, the moment and the value.
fn read(at: &HoverPosition<'_>, own: &str, numbers: &Numbers) -> Option<String> {
    match at {
        HoverPosition::NearDataPoint {
            plot_name,
            position,
            ..
        } => Some(if *plot_name == own {
            let value = numbers.whole(position.y);
            format!("{}\n{own}: {value}", clock(position.x))
        } else {
            (*plot_name).to_owned()
        }),
        HoverPosition::Elsewhere { .. } => None,
    }
}

/// A mark at every whole step.
fn marks(input: &GridInput, step: f64) -> Vec<GridMark> {
    let (from, to) = input.bounds;
    let mut at = (from / step).ceil() * step;
    let mut marks = Vec::new();
    while at <= to {
        marks.push(GridMark {
            value: at,
            step_size: step,
        });
        at += step;
    }
    marks
}

/// Values between two marks: 1, 2 or 5 times a power of ten, five marks at most, the one at 0 aside; 1 where nothing is to be seen.
fn value_step(high: f64) -> f64 {
    let tens = [1.0, 10.0, 100.0, 1e3, 1e4, 1e5];
    let steps = tens.into_iter().flat_map(|ten| [ten, 2.0 * ten, 5.0 * ten]);
    let mut found = steps.filter(|step| high / step < 5.0);
    found.next().unwrap_or(1.0)
}

/// Minutes as minutes and seconds of the drill.
fn clock(minutes: f64) -> String {
    let seconds = (minutes * 60.0).round().max(0.0);
    format!("{:.0}:{:02.0}", (seconds / 60.0).floor(), seconds % 60.0)
}

/// The moment of a mark; at the corner stands the 0 of the other axis, and at the end words would hang over the edge.
fn moment(mark: GridMark, seen: &RangeInclusive<f64>) -> String {
    let edge = 0.03 * (seen.end() - seen.start());
    if mark.value - seen.start() < edge || seen.end() - mark.value < edge {
        String::new()
    } else {
        clock(mark.value)
    }
}

#[expect(clippy::cast_precision_loss, reason = "a screen is coarser")]
fn minutes(at_ms: u64) -> f64 {
    at_ms as f64 / 60_000.0
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_moment_is_read_as_minutes_and_seconds() {
        assert_eq!(clock(2.5), "2:30");
        assert_eq!(clock(1.999_99), "2:00");
    }

    #[test]
    fn a_scale_has_five_marks_at_most() {
        let steps = [0.0, 3.4, 12.0, 120.0, 2_407.0, 9_400.0];
        let steps = steps.map(|high| format!("{:.0}", value_step(high)));
        assert_eq!(steps, ["1", "1", "5", "50", "500", "2000"]);
    }

    #[test]
    fn marks_stand_at_whole_steps_within_the_bounds() {
        let input = GridInput {
            bounds: (0.0, 23.0),
            base_step_size: 1.0,
        };
        let marks = marks(&input, 10.0);
        let at: Vec<String> = marks.iter().map(|m| format!("{:.0}", m.value)).collect();
        assert_eq!(at, ["0", "10", "20"]);
    }

    #[test]
    fn no_moment_is_written_over_the_edge() {
        let seen = 780.0..=800.0;
        let at = |value| {
            let step_size = 2.0;
            moment(GridMark { value, step_size }, &seen)
        };
        assert_eq!([780.0, 784.0, 800.0].map(at), ["", "784:00", ""]);
    }
}
