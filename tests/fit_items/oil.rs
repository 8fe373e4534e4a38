//! Items of oil, and guards. Whether what differs is a stop or an advice is this project's
//! judgement.

use crate::Row;
use farend_core::fit::Judgement;
use farend_core::implement::InputMotor;
use farend_core::kit::Kit;
use farend_core::machine::Circuit;
use farend_core::quantity::{Conductance, Flow, Length, Pressure};
use farend_core::route::RouteId;
use farend_tests::item_kind::ItemKind;
use farend_tests::parts::Parts;

use ItemKind::{CaseDrain, Couplers, Guards, MotorFlow, MotorPressure, OilHeat};
use RouteId::{MachineHydraulics, PumpPack, RearShaft, SkidSteer};

const PASS: Option<Judgement> = Some(Judgement::Pass);
const ADVICE: Option<Judgement> = Some(Judgement::Advice);
const QUESTION: Option<Judgement> = Some(Judgement::Question);
const STOP: Option<Judgement> = Some(Judgement::Stop);

fn motor(parts: &mut Parts) -> &mut InputMotor {
    parts.implement.motor.as_mut().expect("a motor")
}

fn circuits(parts: &mut Parts, change: impl Fn(&mut Circuit)) {
    parts.machine.circuits.iter_mut().for_each(change);
}

fn kits(parts: &mut Parts, change: impl Fn(&mut Kit)) {
    parts.kits.iter_mut().for_each(change);
}

/// Sizes of the couplers in millimetres, the machine's and the hoses'.
fn coupled(parts: &mut Parts, machine: Option<f64>, hoses: Option<f64>) {
    circuits(parts, |circuit| {
        circuit.coupler_size = machine.map(Length::millimetres);
    });
    kits(parts, |kit| {
        if let Some(it) = &mut kit.hoses {
            it.coupler_size = hoses.map(Length::millimetres);
        }
    });
}

/// Whether the motor needs a third line, and whether hoses and machine have it.
fn drained(parts: &mut Parts, needs: Option<bool>, hoses: Option<bool>, machine: Option<bool>) {
    motor(parts).case_drain = needs;
    circuits(parts, |circuit| circuit.case_drain = machine);
    kits(parts, |kit| {
        if let Some(it) = &mut kit.hoses {
            it.case_drain = hoses;
        }
    });
}

/// Whether the kit's shaft and the implement have their guards.
fn guarded(parts: &mut Parts, kit: Option<bool>, implement: Option<bool>) {
    kits(parts, |it| it.shaft.guarded = kit);
    parts.implement.mount.guarded = implement;
}

pub const ROWS: &[Row] = &[
    (Couplers, MachineHydraulics, PASS, |_| {}),
    (Couplers, SkidSteer, PASS, |_| {}),
    (Couplers, MachineHydraulics, ADVICE, |it| {
        coupled(it, Some(12.5), Some(20.0));
    }),
    (Couplers, MachineHydraulics, QUESTION, |it| {
        coupled(it, None, Some(12.5));
    }),
    (Couplers, SkidSteer, QUESTION, |it| {
        coupled(it, Some(12.5), None);
    }),
    // Its hoses stay on its own pump.
    (Couplers, PumpPack, None, |_| {}),
    // The pump's sheet says 52 L/min, of which less than a fifth leaks.
    (MotorFlow, MachineHydraulics, PASS, |it| {
        motor(it).highest_flow = Flow::litres_per_minute(52.0);
    }),
    (MotorFlow, MachineHydraulics, ADVICE, |it| {
        motor(it).highest_flow = Flow::litres_per_minute(40.0);
    }),
    (MotorFlow, RearShaft, None, |_| {}),
    (MotorPressure, MachineHydraulics, PASS, |it| {
        it.settings.own.relief = Some(Pressure::bar(199.9));
        motor(it).highest_pressure = Pressure::bar(200.0);
    }),
    (MotorPressure, MachineHydraulics, ADVICE, |it| {
        it.settings.own.relief = Some(Pressure::bar(200.1));
        motor(it).highest_pressure = Pressure::bar(200.0);
    }),
    (MotorPressure, PumpPack, ADVICE, |it| {
        it.settings.pack.relief = Some(Pressure::bar(200.1));
        motor(it).highest_pressure = Pressure::bar(200.0);
    }),
    (CaseDrain, MachineHydraulics, PASS, |it| {
        drained(it, Some(true), Some(true), Some(true));
    }),
    (CaseDrain, MachineHydraulics, PASS, |it| {
        drained(it, Some(false), None, Some(false));
    }),
    (CaseDrain, MachineHydraulics, STOP, |it| {
        drained(it, Some(true), Some(true), Some(false));
    }),
    (CaseDrain, SkidSteer, STOP, |it| {
        drained(it, Some(true), Some(false), None);
    }),
    (CaseDrain, MachineHydraulics, QUESTION, |it| {
        drained(it, Some(true), Some(true), None);
    }),
    (CaseDrain, MachineHydraulics, QUESTION, |it| {
        drained(it, Some(true), None, Some(true));
    }),
    (CaseDrain, MachineHydraulics, QUESTION, |it| {
        drained(it, None, Some(true), Some(true));
    }),
    // A pump pack's own tank takes it, whatever the machine has.
    (CaseDrain, PumpPack, PASS, |it| {
        drained(it, Some(true), Some(true), Some(false));
    }),
    (CaseDrain, PumpPack, STOP, |it| {
        drained(it, Some(true), Some(false), Some(true));
    }),
    (OilHeat, MachineHydraulics, ADVICE, |_| {}),
    (OilHeat, MachineHydraulics, PASS, |it| {
        let cooler = Some(Conductance::watts_per_kelvin(5000.0));
        circuits(it, |circuit| circuit.reservoir.cooler = cooler);
    }),
    (OilHeat, RearShaft, None, |_| {}),
    (Guards, RearShaft, PASS, |_| {}),
    (Guards, RearShaft, STOP, |it| {
        guarded(it, Some(false), Some(true));
    }),
    (Guards, RearShaft, STOP, |it| guarded(it, None, Some(false))),
    (Guards, RearShaft, QUESTION, |it| {
        guarded(it, None, Some(true));
    }),
    (Guards, PumpPack, QUESTION, |it| {
        guarded(it, Some(true), None);
    }),
    (Guards, PumpPack, STOP, |it| {
        guarded(it, Some(false), Some(true));
    }),
    // It has no shaft outside.
    (Guards, MachineHydraulics, PASS, |it| {
        guarded(it, Some(false), Some(true));
    }),
];
