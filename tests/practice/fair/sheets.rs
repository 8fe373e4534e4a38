//! Sheets, held against the yard's figures by hand.

use super::{Seen, distinct, right_one, shows};
use farend_core::claims::Check as Claim;
use farend_core::machine::SteeringShare;
use farend_core::practice::Question;
use farend_core::quantity::Flow;

impl Seen<'_> {
    /// Whether a claim, the least and the likely, is clearly above what can be, the likely and the
    /// most: by 3 per cent of rounding and five more. What isn't must hold at the likely values.
    fn is_wrong(&self, claims: (f64, f64), can_be: (f64, f64)) -> bool {
        let is_wrong = claims.0 > can_be.1 * 1.03 * 1.049;
        assert!(is_wrong || claims.1 <= can_be.0 * 1.03, "{:?}", self.case);
        is_wrong
    }

    pub fn sheet(&self, choices: &[Option<Claim>]) -> Vec<String> {
        distinct(choices);
        assert!(choices.len() >= 3);
        let Question::Sheet { sheet, .. } = &self.case.question else {
            panic!("{:?}", self.case);
        };
        let machine = self.machine;
        let circuit = self.case.settings.own_circuit(machine).expect("it has oil");
        let flow = sheet.flow.expect("a flow");
        let pressure = sheet.pressure.expect("a pressure");
        // P = Q·p
        let hydraulic = (pressure * flow).to_kilowatts();
        let claimed = sheet.hydraulic.expect("a power").to_kilowatts();
        let power = self.is_wrong((claimed, claimed), (hydraulic, hydraulic));
        // P = Q·p/(ηv·ηhm) against the engine's net power at that speed; the sheet says net power.
        let at_speed = machine.engine.net_at(circuit.engine_speed).likely;
        let net = sheet.engine.expect("a power") * (at_speed / machine.engine.net.likely);
        let net = net.to_kilowatts();
        let (volumetric, hydro) = (circuit.volumetric, circuit.hydro_mechanical);
        let least = hydraulic / (volumetric.high * hydro.high);
        let likely = hydraulic / (volumetric.likely * hydro.likely);
        let engine = self.is_wrong((least, likely), (net, net));
        // Where steering takes a part of the pump's flow: just that pump's flow is claimed.
        let steering = match circuit.steering {
            SteeringShare::FixedPriority(share) | SteeringShare::Summed(share) if !engine => {
                let claimed = flow.to_litres_per_minute();
                let left = |flow: Flow, share| (flow - share).to_litres_per_minute();
                let most = left(circuit.flow.high, share.low);
                let likely = left(circuit.flow.likely, share.likely);
                self.is_wrong((claimed, claimed), (likely, most))
            }
            _ => false,
        };
        let pto = machine.rear_pto(false).or(machine.mid_pto.as_ref());
        let pto = pto.is_some_and(|pto| {
            let train = pto.train(&machine.engine).efficiency;
            let net = machine.engine.net_at(pto.engine_speed);
            let most = (net.high * train.high).to_kilowatts();
            let likely = (net.likely * train.likely).to_kilowatts();
            let claimed = sheet.pto.expect("a PTO's power").to_kilowatts();
            self.is_wrong((claimed, claimed), (likely, most))
        });
        let found: Vec<_> = [
            (Claim::HydraulicPower, power),
            (Claim::EnginePower, engine),
            (Claim::Steering, steering),
            (Claim::PtoPower, pto),
        ]
        .into_iter()
        .filter_map(|(claim, is_wrong)| is_wrong.then_some(claim))
        .collect();
        assert!(found.len() <= 1, "{found:?}: {:?}", self.case);
        let flaw = found.first().copied();
        let (right, shown) = right_one(self.case, &self.answer, choices.len());
        assert_eq!(choices[right], flaw, "{:?}", self.case);
        let mut counts = shows(shown);
        counts.push(format!("sheet: {}", flaw.map_or("nothing", Claim::word)));
        counts
    }
}
