//! A curve of what arrives by the open route over one of its controls.

use super::watch;
use crate::model::Model;
use crate::text::{labels, sentences};
use crate::{browser, number};
use farend_core::control::{Control, Range};
use farend_core::quantity::Power;
use farend_core::spread::Spread;
use farend_core::sweep::{Point, sweep};
use farend_core::units::{Quantity, UnitSystem};
use leptos::html::Canvas;
use leptos::prelude::*;
use plotters::coord::Shift;
use plotters::prelude::*;
use plotters_canvas::CanvasBackend;
use web_sys::HtmlCanvasElement;

/// Points of the curve: enough that no bend is missed at the widest screen.
const POINTS: u16 = 61;
/// Rows of the table beside it.
const ROWS: usize = 7;

const INK: RGBColor = RGBColor(27, 31, 35);
const FAINT: RGBColor = RGBColor(214, 208, 196);
const ARRIVES: RGBColor = RGBColor(22, 75, 107);
const NEED: RGBColor = RGBColor(150, 22, 84);

/// All that a picture shows, in the reader's units.
#[derive(Clone, PartialEq)]
struct Picture {
    points: Vec<Point>,
    range: Range,
    now: Spread<Power>,
    units: UnitSystem,
}

/// The curve, the choice of its control, and its table.
#[component]
pub fn Curve(controls: Memo<Vec<Control>>) -> impl IntoView {
    let model = Model::unhurried();
    let canvas = NodeRef::<Canvas>::new();
    let width = RwSignal::new(0.0);
    // The control wished for, or the route's first where it has another set of them.
    let over = Memo::new(move |_| {
        let wished = model.state.read().over;
        let controls = controls.read();
        controls
            .iter()
            .find(|control| **control == wished)
            .or_else(|| controls.first())
            .copied()
    });
    let picture = Memo::new(move |_| picture(model, over.get()?));

    watch::size(canvas, move |canvas| {
        let _ = width.try_set(canvas.get_bounding_client_rect().width());
    });
    Effect::new(move |_| {
        let (Some(canvas), Some(picture)) = (canvas.get(), picture.get()) else {
            return;
        };
        // A failure to draw leaves the table, which says the same.
        let _ = draw(&canvas, width.get(), &picture);
    });

    let message = move || {
        let picture = picture.read();
        let picture = picture.as_ref()?;
        let powers = || picture.points.iter().map(|point| point.delivered.likely);
        let first = powers().next()?;
        let (least, most) = (
            powers().fold(first, Power::min),
            powers().fold(first, Power::max),
        );
        let said = |power| number::power(power, picture.units);
        Some(sentences::curve(
            model.route.get(),
            over.get()?,
            &said(least),
            &said(most),
        ))
    };
    let choose = move |event| {
        let chosen = event_target_value(&event);
        let controls = controls.get_untracked();
        if let Some(control) = controls.into_iter().find(|it| key(*it) == chosen) {
            model.state.update(|state| state.over = control);
        }
    };
    view! {
        <Show when=move || picture.read().is_some()>
            <label class="choice over">
                <span>{labels::curve_over()}</span>
                <select data-testid="over" on:change=choose>
                    <For each=move || controls.get() key=|control| *control let:control>
                        <option
                            value=key(control)
                            prop:selected=move || over.get() == Some(control)
                        >
                            {labels::control(control)}
                        </option>
                    </For>
                </select>
            </label>
            <figure class="curve">
                <canvas node_ref=canvas role="img" aria-label=message data-testid="curve"></canvas>
                <figcaption class="curve-key">
                    <span class="of-likely">{labels::curve_likely()}</span>
                    <span class="of-range">{labels::curve_range()}</span>
                    <span class="of-need">{labels::curve_need()}</span>
                    <span class="of-now">{labels::curve_point()}</span>
                </figcaption>
            </figure>
            <details class="table">
                <summary>{labels::as_table()}</summary>
                <div class="scroll" tabindex="0" role="region" aria-label=labels::curve_over()>
                <table data-testid="curve-table">
                    <thead>
                        <tr>
                            <th scope="col">{move || over.get().map(labels::control)}</th>
                            <th scope="col">{labels::delivered()}</th>
                            <th scope="col">{labels::curve_range()}</th>
                        </tr>
                    </thead>
                    <tbody>{move || picture.read().as_ref().map(table_rows)}</tbody>
                </table>
                </div>
            </details>
        </Show>
    }
}

/// A control by what the browser keeps of a choice.
fn key(control: Control) -> String {
    format!("{control:?}")
}

fn picture(model: Model, over: Control) -> Option<Picture> {
    let (machine, implement) = (model.machine.read(), model.implement.read());
    let (machine, implement) = (machine.as_ref()?, implement.as_ref()?);
    let yard = model.yard.read();
    let settings = model.settings.get();
    let route = model.route.get();
    let all = model.comparison.read();
    let run = all.as_ref()?.route(route)?.run()?;
    let range = over.range(machine, implement, yard.kit(&run.kit), &settings)?;
    let yard = (machine, implement, yard.kits.as_slice());
    Some(Picture {
        points: sweep(yard, route, &settings, (over, range), POINTS),
        range,
        now: run.delivered,
        units: model.units.get(),
    })
}

fn table_rows(picture: &Picture) -> impl IntoView + use<> {
    let each = (picture.points.len().saturating_sub(1) / (ROWS - 1)).max(1);
    let units = picture.units;
    picture
        .points
        .iter()
        .step_by(each)
        .map(|point| {
            let (low, high) = (point.delivered.low, point.delivered.high);
            view! {
                <tr>
                    <th scope="row">{number::shown(point.at, units)}</th>
                    <td>{number::power(point.delivered.likely, units)}</td>
                    <td>{number::range(Quantity::Power(low), Quantity::Power(high), units)}</td>
                </tr>
            }
        })
        .collect_view()
}

/// Draws at twice the screen's own pixels: with fewer the picture is blurred, and the library sets
/// points at whole pixels, which shows as steps.
fn draw(canvas: &HtmlCanvasElement, width: f64, picture: &Picture) -> Option<()> {
    /// Height over width.
    const SHAPE: f64 = 0.56;
    if width < 1.0 {
        return None;
    }
    let ratio = browser::pixel_ratio().max(1.0) * 2.0;
    canvas.set_width((width * ratio).round() as u32);
    canvas.set_height((width * SHAPE * ratio).round() as u32);
    let area = CanvasBackend::with_canvas_object(canvas.clone())?.into_drawing_area();
    plot(&area, width, ratio, picture).ok()
}

type Drawn<'a> = Result<(), DrawingAreaErrorKind<<CanvasBackend as DrawingBackend>::ErrorType>>;

fn plot<'a>(
    area: &DrawingArea<CanvasBackend, Shift>,
    width: f64,
    ratio: f64,
    picture: &Picture,
) -> Drawn<'a> {
    let units = picture.units;
    let x = |quantity: Quantity| quantity.shown_in(units).0;
    let y = |power: Power| Quantity::Power(power).shown_in(units).0;
    let px = |size: f64| (size * ratio).round() as u32;
    let most = picture
        .points
        .iter()
        .map(|point| y(point.delivered.high).max(y(point.need)))
        .fold(0.0, f64::max);
    let ends = x(picture.range.min)..x(picture.range.max);
    // Type as large as the page's own, at any width.
    let type_size = px((width / 30.0).clamp(13.0, 20.0));
    let type_face = ("system-ui, sans-serif", type_size).into_font().color(&INK);

    area.fill(&WHITE)?;
    let mut chart = ChartBuilder::on(area)
        .margin(px(6.0))
        .margin_right(px(16.0))
        .x_label_area_size(type_size * 7 / 2)
        .y_label_area_size(type_size * 7 / 2)
        .build_cartesian_2d(ends.clone(), 0.0..most * 1.08)?;
    chart
        .configure_mesh()
        .light_line_style(TRANSPARENT)
        .bold_line_style(FAINT.stroke_width(px(1.0)))
        .axis_style(INK.stroke_width(px(1.0)))
        .label_style(type_face.clone())
        .x_labels(5)
        .y_labels(5)
        .x_label_formatter(&|value| number::fixed(*value, 0))
        .y_label_formatter(&|value| number::fixed(*value, 0))
        .x_desc(number::unit(picture.range.now, units))
        .y_desc(Quantity::Power(Power::ZERO).shown_in(units).1)
        .axis_desc_style(type_face)
        .draw()?;

    let up = picture.points.iter().map(|p| (x(p.at), y(p.delivered.low)));
    let down = picture
        .points
        .iter()
        .rev()
        .map(|p| (x(p.at), y(p.delivered.high)));
    let band: Vec<_> = up.chain(down).collect();
    chart.draw_series([Polygon::new(band, ARRIVES.mix(0.18))])?;
    chart.draw_series(DashedLineSeries::new(
        picture.points.iter().map(|p| (x(p.at), y(p.need))),
        px(8.0),
        px(5.0),
        NEED.stroke_width(px(2.5)),
    ))?;
    let likely = picture
        .points
        .iter()
        .map(|p| (x(p.at), y(p.delivered.likely)));
    chart.draw_series(LineSeries::new(likely, ARRIVES.stroke_width(px(3.0))))?;
    let now = (x(picture.range.now), y(picture.now.likely));
    chart.draw_series([Circle::new(now, px(7.0), WHITE.filled())])?;
    chart.draw_series([Circle::new(now, px(5.5), INK.filled())])?;
    area.present()
}
