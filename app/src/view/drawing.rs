//! A route as a drawing: where on a machine it goes, and where it puts the implement. It is not to scale.

use crate::model::Model;
use crate::text::drawing as text;
use farend_core::hookup::Seat;
use farend_core::machine::MachineKind;
use farend_core::route::RouteId;
use leptos::prelude::*;

/// The open route on the machine.
#[component]
pub fn Drawing() -> impl IntoView {
    let model = Model::of_page();
    let shown = Memo::new(move |_| {
        let route = model.route.get();
        let survey = model.survey.read();
        let seat = survey.as_ref()?.route(route)?.running.as_ref()?.seat;
        let kind = model.machine.read().as_ref()?.kind;
        Some((route, seat, kind))
    });
    move || {
        shown
            .get()
            .map(|(route, seat, kind)| drawing(route, seat, kind))
    }
}

/// A machine's outline; it faces right.
struct Outline {
    body: &'static str,
    /// Wheels: centre across, centre down, radius.
    wheels: [(u8, u8, u8); 2],
    /// The engine's upper left corner.
    engine: (u8, u8),
}

const TRACTOR: Outline = Outline {
    body: "M44 50 V40 L48 16 H76 L79 33 H114 Q120 33 120 39 V54 H70 Z M53 20 L50 38 H75 L72 20 Z",
    wheels: [(58, 53, 17), (108, 59, 11)],
    engine: (94, 38),
};
const SKID_STEER: Outline = Outline {
    body: "M46 58 V30 Q46 25 51 25 H72 L76 14 H96 L100 40 L110 48 V58 Z M79 18 H93 L96 40 H76 Z",
    wheels: [(62, 59, 11), (94, 59, 11)],
    engine: (50, 32),
};

/// What carries the implement.
fn carries(seat: Seat, kind: MachineKind) -> &'static str {
    match (seat, kind) {
        (Seat::Loader, MachineKind::Tractor) => "M74 26 L124 38 L140 54",
        (Seat::Loader, MachineKind::SkidSteer) => "M48 28 L104 34 L138 56",
        (Seat::FrontFrame, _) => "M74 62 H138",
        (Seat::RearBackwards | Seat::RearForwards, _) => "M46 54 H26 M48 44 L28 50",
    }
}

fn is_front(seat: Seat) -> bool {
    matches!(seat, Seat::Loader | Seat::FrontFrame)
}

/// A route's way over the machine.
#[derive(Default)]
struct Way {
    /// Where a shaft turns.
    shaft: &'static str,
    /// Where oil flows.
    oil: Option<&'static str>,
    /// Boxes that change speed or direction.
    boxes: &'static [(u8, u8)],
    /// The pump.
    pump: Option<(u8, u8)>,
}

fn way(route: RouteId, seat: Seat) -> Way {
    let front = is_front(seat);
    match route {
        RouteId::RearShaft => Way {
            shaft: "M94 46 H40 L22 56",
            boxes: &[(40, 46)],
            ..Way::default()
        },
        RouteId::MidShaft => Way {
            shaft: "M94 46 H84 V58 L142 58",
            boxes: &[(84, 58)],
            ..Way::default()
        },
        RouteId::TurnedForward => Way {
            shaft: "M94 46 H38 V66 H122 L142 60",
            boxes: &[(38, 46), (38, 66), (122, 66)],
            ..Way::default()
        },
        RouteId::MachineHydraulics => Way {
            shaft: "M94 46 H84",
            oil: Some(if front {
                "M84 46 V29 L124 39 L142 56"
            } else {
                "M84 46 V30 H36 L22 54"
            }),
            pump: Some((84, 46)),
            ..Way::default()
        },
        RouteId::PumpPack => Way {
            shaft: "M94 46 H38",
            oil: Some(if front {
                "M38 46 V28 H74 L124 39 L142 56"
            } else {
                "M38 46 L22 54"
            }),
            pump: Some((38, 46)),
            ..Way::default()
        },
        RouteId::SkidSteer => Way {
            shaft: "M70 40 H80",
            oil: Some("M80 40 V30 L104 36 L142 56"),
            pump: Some((80, 40)),
            ..Way::default()
        },
    }
}

/// A route on a kind of machine.
fn drawing(route: RouteId, seat: Seat, kind: MachineKind) -> impl IntoView {
    let outline = match kind {
        MachineKind::Tractor => TRACTOR,
        MachineKind::SkidSteer => SKID_STEER,
    };
    let way = way(route, seat);
    let (x, y) = (if is_front(seat) { 148 } else { 16 }, 58);
    let wheel = |(x, y, r): (u8, u8, u8)| {
        view! {
            <circle class="wheel" cx=x cy=y r=r />
            <circle class="hub" cx=x cy=y r="3" />
        }
    };
    // A line in the paper's colour keeps the way apart from what it crosses.
    let clear = |path: &'static str| view! { <path class="clear" d=path /> };
    let circle = |class: &'static str| move |(x, y): (u8, u8)| view! { <circle class=class cx=x cy=y r="3.5" /> };
    view! {
        <svg class="drawing" viewBox="0 0 164 78" role="img" aria-label=text::drawing(route, seat)>
            <path class="ground" d="M2 70 H162" />
            <path class="carries" d=carries(seat, kind) />
            <path class="body" d=outline.body />
            {outline.wheels.map(wheel).collect_view()}
            <circle class="rotor" cx=x cy=y r="10" />
            <path class="rotor" d=format!("M{} {} l14 14 m0 -14 l-14 14", x - 7, y - 7) />
            {clear(way.shaft)}
            {way.oil.map(clear)}
            <path class="shaft" d=way.shaft />
            {way.oil.map(|path| view! { <path class="oil" d=path /> })}
            <rect
                class="engine"
                x=outline.engine.0
                y=outline.engine.1
                width="20"
                height="13"
                rx="2"
            />
            {way.boxes.iter().copied().map(circle("shaft box")).collect_view()}
            {way.pump.map(circle("oil box"))}
            <path class="drives" d=drives(seat) />
        </svg>
    }
}

/// Which way it drives at work.
fn drives(seat: Seat) -> &'static str {
    match seat {
        Seat::RearBackwards => "M100 8 H74 m7 -5 l-7 5 l7 5",
        Seat::Loader | Seat::FrontFrame | Seat::RearForwards => "M74 8 H100 m-7 -5 l7 5 l-7 5",
    }
}
