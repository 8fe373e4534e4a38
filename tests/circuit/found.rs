//! What a circuit does at the most that arrives.

use farend_core::chain::{Ledger, Passage};
use farend_core::drive::Limit;
use farend_core::quantity::Power;
use farend_core::stage::{StageKind, StagePhysics};
use serde::Deserialize;

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Found {
    pub limit: Held,
    pub delivered_kw: f64,
    pub pump_l_min: f64,
    pub pump_bar: f64,
    pub motor_rpm: f64,
    pub rotor_nm: f64,
    /// What every part with oil loses, summed.
    pub oil_heat_kw: f64,
    /// What goes into the pump's shaft less what comes out of the motor's.
    pub between_shafts_kw: f64,
    pub hose_loss_kw: f64,
    /// In the hose to the motor.
    pub reynolds: f64,
    /// With Colebrook's equation for turbulent friction.
    pub delivered_by_colebrook_kw: f64,
}

/// What holds a circuit where it is, in the words of `circuits.py`.
#[derive(Clone, Copy, Debug, Deserialize, PartialEq, Eq, PartialOrd, Ord)]
#[serde(rename_all = "snake_case")]
pub enum Held {
    Engine,
    Relief,
    Motor,
    GearIn,
    GearOut,
    Flow,
}

impl Held {
    pub const ALL: [Self; 6] = [
        Self::Engine,
        Self::Relief,
        Self::Motor,
        Self::GearIn,
        Self::GearOut,
        Self::Flow,
    ];

    /// The core's name for it; both gears' ratings are the same to it.
    pub fn limit(self) -> Limit {
        match self {
            Self::Engine => Limit::Engine,
            Self::Relief => Limit::Pressure,
            Self::Motor => Limit::Implement,
            Self::GearIn | Self::GearOut => Limit::ShaftRating,
            Self::Flow => Limit::Flow,
        }
    }
}

fn passage(ledger: &Ledger, kind: StageKind) -> Option<&Passage> {
    let mut passages = ledger.passages.iter();
    passages.find(|passage| passage.stage.kind() == kind)
}

/// The core's pressure at the pump's outlet. `None` where it has stalled before.
pub fn pump_bar(ledger: &Ledger) -> Option<f64> {
    let pump = passage(ledger, StageKind::Pump)?;
    let flow = pump.gives.rate.flowing().ok()?;
    Some((pump.gives.power / flow).to_bar())
}

impl Found {
    /// Each of its figures after the core's, by name. `None` where the core stalls.
    pub fn beside(&self, ledger: &Ledger) -> Option<[(&'static str, f64, f64); 8]> {
        let passage = |kind| passage(ledger, kind);
        let (pump, motor) = (passage(StageKind::Pump)?, passage(StageKind::Motor)?);
        let hoses = passage(StageKind::Hoses)?;
        let delivered = ledger.delivered()?;
        let flow = pump.gives.rate.flowing().ok()?;
        let motor_speed = motor.gives.rate.turning().ok()?;
        let rotor_speed = delivered.rate.turning().ok()?;
        let torque = delivered.power / rotor_speed;
        let between_shafts = pump.takes.power - motor.gives.power;
        let kw = Power::to_kilowatts;
        Some([
            ("power delivered", kw(delivered.power), self.delivered_kw),
            ("pump's flow", flow.to_litres_per_minute(), self.pump_l_min),
            ("pump's pressure", pump_bar(ledger)?, self.pump_bar),
            ("motor's speed", motor_speed.to_rpm(), self.motor_rpm),
            ("rotor's torque", torque.to_newton_metres(), self.rotor_nm),
            ("heat in oil", kw(ledger.heats_oil()), self.oil_heat_kw),
            (
                "lost between shafts",
                kw(between_shafts),
                self.between_shafts_kw,
            ),
            ("hoses' loss", kw(hoses.loss), self.hose_loss_kw),
        ])
    }
}
