//! Names of the fields of a yard file, as people know them.

use super::say::fields as say;

/// A field's name, by the group that it stands in – none for an entry's and the yard's own – and
/// its key.
pub fn field(group: &str, key: &str) -> Option<&'static str> {
    let own = match group {
        "engine" => engine(key),
        "curve" => curve(key),
        "rear_pto" | "economy_pto" | "mid_pto" => pto(key),
        "circuits" => circuit(key),
        "steering" => steering(key),
        "end" => end(key),
        "hitch" => hitch(key),
        "loader" => loader(key),
        "axles" => axles(key),
        "rotor" => rotor(key),
        "shafts" => shaft(key),
        "motor" => motor(key),
        "drive" => step(key),
        "pump" => pump(key),
        "hoses" => hoses(key),
        "shaft" => kit_shaft(key),
        _ => None,
    };
    own.or_else(|| common(key))
}

/// What means the same wherever it stands.
fn common(key: &str) -> Option<&'static str> {
    Some(match key {
        // The yard.
        "place" => say::place(),
        "invented" => say::invented(),
        "dealer" => say::dealer(),
        "note" => say::note(),
        "currency" => say::currency(),
        "hour_price" => say::hour_price(),
        "machines" => say::machines(),
        "implements" => say::implements(),
        "kits" => say::kits(),
        "format_version" => say::format_version(),
        // Every entry.
        "id" => say::id(),
        "name" => say::name(),
        "kind" => say::kind(),
        "mass_kg" => say::mass_kg(),
        "price" => say::price(),
        // A machine.
        "engine" => say::engine(),
        "rear_pto" => say::rear_pto(),
        "economy_pto" => say::economy_pto(),
        "mid_pto" => say::mid_pto(),
        "circuits" => say::circuits(),
        "oil" => say::oil(),
        "transmission" => say::transmission(),
        "hitch" => say::hitch(),
        "loader" => say::loader(),
        "axles" => say::axles(),
        "end" => say::end(),
        "reservoir" => say::reservoir(),
        // An implement.
        "rotor" => say::rotor(),
        "need_kw" => say::need_kw(),
        "shafts" => say::shafts(),
        "motor" => say::motor(),
        "work" => say::work(),
        "travel" => say::travel(),
        "mount" => say::mount(),
        // A kit.
        "routes" => say::routes(),
        "included" => say::included(),
        "pto_rpm" => say::kit_pto_rpm(),
        "drive" => say::drive(),
        "pump" => say::pump(),
        "hoses" => say::hoses(),
        "shaft" => say::shaft(),
        "seat" => say::seat(),
        "hookup_min" => say::hookup_min(),
        "fitting_price" => say::fitting_price(),
        // Oil, tanks, pumps, motors, couplers.
        "grade" => say::grade(),
        "cst_40" => say::cst_40(),
        "cst_100" => say::cst_100(),
        "kg_m3" => say::kg_m3(),
        "oil_l" => say::oil_l(),
        "cooler_w_k" => say::cooler_w_k(),
        "relief_bar" => say::relief_bar(),
        "valve_bar" => say::valve_bar(),
        "volumetric" => say::volumetric(),
        "hydro_mechanical" => say::hydro_mechanical(),
        "displacement_cm3" => say::displacement_cm3(),
        "coupler_mm" => say::coupler_mm(),
        "case_drain" => say::case_drain(),
        // Work and travel.
        "measure" => say::measure(),
        "idle_kw" => say::idle_kw(),
        "kwh_per_unit" => say::kwh_per_unit(),
        "width_m" => say::width_m(),
        "depth_m" => say::depth_m(),
        "density_kg_m3" => say::density_kg_m3(),
        "usual_km_h" => say::usual_km_h(),
        "highest_km_h" => say::highest_km_h(),
        "ground" => say::ground(),
        "pushing_n" => say::pushing_n(),
        // A mount.
        "category" => say::category(),
        "centre_m" => say::centre_m(),
        "backwards" => say::backwards(),
        "guarded" => say::guarded(),
        // An uncertain figure.
        "low" => say::low(),
        "likely" => say::likely(),
        "high" => say::high(),
        "source" => say::source(),
        _ => return None,
    })
}

fn engine(key: &str) -> Option<&'static str> {
    Some(match key {
        "net_kw" => say::engine_net_kw(),
        "gross_kw" => say::engine_gross_kw(),
        "rated_rpm" => say::engine_rated_rpm(),
        "lowest_rpm" => say::engine_lowest_rpm(),
        "curve" => say::engine_curve(),
        "aspiration" => say::engine_aspiration(),
        _ => return None,
    })
}

fn curve(key: &str) -> Option<&'static str> {
    Some(match key {
        "rpm" => say::curve_rpm(),
        "kw" => say::curve_kw(),
        _ => return None,
    })
}

fn pto(key: &str) -> Option<&'static str> {
    Some(match key {
        "rpm" => say::pto_rpm(),
        "engine_rpm" => say::pto_engine_rpm(),
        "tested_kw" => say::pto_tested_kw(),
        "rating_kw" => say::pto_rating_kw(),
        _ => return None,
    })
}

fn circuit(key: &str) -> Option<&'static str> {
    Some(match key {
        "outlet" => say::circuit_outlet(),
        "flow_l_min" => say::circuit_flow_l_min(),
        "engine_rpm" => say::circuit_engine_rpm(),
        "steering" => say::circuit_steering(),
        "supply" => say::circuit_supply(),
        _ => return None,
    })
}

fn steering(key: &str) -> Option<&'static str> {
    Some(match key {
        "policy" => say::steering_policy(),
        "flow_l_min" => say::steering_flow_l_min(),
        _ => return None,
    })
}

fn end(key: &str) -> Option<&'static str> {
    Some(match key {
        "shaft" => say::end_shaft(),
        "turns" => say::end_turns(),
        "height_m" => say::end_height_m(),
        "ahead_m" => say::end_ahead_m(),
        "behind_m" => say::end_behind_m(),
        "above_m" => say::end_above_m(),
        _ => return None,
    })
}

fn hitch(key: &str) -> Option<&'static str> {
    Some(match key {
        "category" => say::hitch_category(),
        "lift_kg" => say::hitch_lift_kg(),
        "lift_at_m" => say::hitch_lift_at_m(),
        "lowest_m" => say::hitch_lowest_m(),
        "highest_m" => say::hitch_highest_m(),
        _ => return None,
    })
}

fn loader(key: &str) -> Option<&'static str> {
    Some(match key {
        "lift_kg" => say::loader_lift_kg(),
        "reach_m" => say::loader_reach_m(),
        "third_function" => say::loader_third_function(),
        _ => return None,
    })
}

fn axles(key: &str) -> Option<&'static str> {
    Some(match key {
        "wheelbase_m" => say::axles_wheelbase_m(),
        "front_kg" => say::axles_front_kg(),
        "front_limit_kg" => say::axles_front_limit_kg(),
        "rear_limit_kg" => say::axles_rear_limit_kg(),
        "loader_ahead_m" => say::axles_loader_ahead_m(),
        "frame_ahead_m" => say::axles_frame_ahead_m(),
        "hitch_behind_m" => say::axles_hitch_behind_m(),
        _ => return None,
    })
}

fn rotor(key: &str) -> Option<&'static str> {
    Some(match key {
        "rated_rpm" => say::rotor_rated_rpm(),
        "lowest_rpm" => say::rotor_lowest_rpm(),
        "highest_rpm" => say::rotor_highest_rpm(),
        "diameter_mm" => say::rotor_diameter_mm(),
        _ => return None,
    })
}

fn shaft(key: &str) -> Option<&'static str> {
    Some(match key {
        "place" => say::shaft_place(),
        "rpm" => say::shaft_rpm(),
        "drive" => say::shaft_drive(),
        "rating_kw" => say::shaft_rating_kw(),
        "end" => say::shaft_end(),
        "price" => say::shaft_price(),
        _ => return None,
    })
}

fn motor(key: &str) -> Option<&'static str> {
    Some(match key {
        "ratio" => say::motor_ratio(),
        "drive" => say::motor_drive(),
        "highest_l_min" => say::motor_highest_l_min(),
        "highest_bar" => say::motor_highest_bar(),
        "starting" => say::motor_starting(),
        "case_drain" => say::motor_case_drain(),
        "price" => say::motor_price(),
        _ => return None,
    })
}

fn step(key: &str) -> Option<&'static str> {
    Some(match key {
        "ratio" => say::step_ratio(),
        "efficiency" => say::step_efficiency(),
        "rating_nm" => say::step_rating_nm(),
        "slip_clutch_nm" => say::step_slip_clutch_nm(),
        "angle_deg" => say::step_angle_deg(),
        _ => return None,
    })
}

fn pump(key: &str) -> Option<&'static str> {
    Some(match key {
        "highest_rpm" => say::pump_highest_rpm(),
        "suction_bore_mm" => say::pump_suction_bore_mm(),
        "suction_length_m" => say::pump_suction_length_m(),
        "suction_lift_m" => say::pump_suction_lift_m(),
        _ => return None,
    })
}

fn hoses(key: &str) -> Option<&'static str> {
    Some(match key {
        "bore_mm" => say::hoses_bore_mm(),
        "length_m" => say::hoses_length_m(),
        "back_bore_mm" => say::hoses_back_bore_mm(),
        "couplers" => say::hoses_couplers(),
        "coupler_bar" => say::hoses_coupler_bar(),
        "coupler_l_min" => say::hoses_coupler_l_min(),
        "fittings_k" => say::hoses_fittings_k(),
        _ => return None,
    })
}

fn kit_shaft(key: &str) -> Option<&'static str> {
    Some(match key {
        "pto_end" => say::kit_shaft_pto_end(),
        "far_end" => say::kit_shaft_far_end(),
        "closed_m" => say::kit_shaft_closed_m(),
        "open_m" => say::kit_shaft_open_m(),
        "reverses" => say::kit_shaft_reverses(),
        _ => return None,
    })
}

/// One of a list's groups.
pub fn item(key: &str) -> &'static str {
    match key {
        "circuits" => say::item_circuits(),
        "shafts" => say::item_shafts(),
        "drive" => say::item_drive(),
        "curve" => say::item_curve(),
        _ => say::item_other(),
    }
}

/// The name of what stands at a path such as `circuits[0].steering.flow_l_min.low`: that of its
/// last field, and of the figure where it is one of three.
pub fn at(path: &str) -> String {
    let keys: Vec<_> = keys(path).collect();
    let named = |group: &str, key: &str| field(group, key).unwrap_or_default().to_owned();
    let of =
        |group: &str, key: &str, figure: &str| figure_of(&named(group, key), &named("", figure));
    match keys.as_slice() {
        [
            ..,
            group,
            key,
            figure @ ("low" | "likely" | "high" | "source"),
        ] => of(group, key, figure),
        [key, figure @ ("low" | "likely" | "high" | "source")] => of("", key, figure),
        [.., group, key] => named(group, key),
        [key] => named("", key),
        [] => String::new(),
    }
}

/// One of the three figures of a field, or where they come from: "Net power, low".
pub fn figure_of(field: &str, figure: &str) -> String {
    let figure = &super::small(figure);
    say::FigureOf { field, figure }.said()
}

/// The lists on a path, each with the place of it that the path goes through.
pub fn places(path: &str) -> Vec<(&str, usize)> {
    let parts = path.split('.').filter_map(|part| {
        let (key, place) = part.strip_suffix(']')?.split_once('[')?;
        Some((key, place.parse().ok()?))
    });
    parts.collect()
}

/// The keys of a path, without places.
pub fn keys(path: &str) -> impl Iterator<Item = &str> {
    path.split('.')
        .map(|part| part.split('[').next().unwrap_or_default())
}

#[cfg(test)]
mod tests {
    use super::{at, field};
    use farend_core::yard::rules::YARD;
    use farend_core::yard::shape::{Field, Shape};

    /// Each field of a group and of those in it.
    fn walk(group: &str, fields: &[Field], see: &mut impl FnMut(&str, &Field)) {
        for it in fields {
            see(group, it);
            match it.shape {
                // An entry's own fields have no group.
                Shape::Many { of, .. } if group == "YARD" => walk("", of, see),
                Shape::Group(of) | Shape::Many { of, .. } => walk(it.key, of, see),
                _ => {}
            }
        }
    }

    #[test]
    fn every_field_of_the_rules_has_a_name() {
        let mut seen = 0;
        walk("YARD", YARD, &mut |group, it| {
            seen += 1;
            assert!(field(group, it.key).is_some(), "{group}.{}", it.key);
        });
        assert!(seen > 100, "{seen}");
        assert_eq!(field("engine", "not_there"), None);
    }

    #[test]
    fn a_path_is_named_by_its_last_field() {
        assert_eq!(at("engine.net_kw"), "Net power");
        assert_eq!(
            at("circuits[0].steering.flow_l_min.low"),
            "Steering's flow, low"
        );
        assert_eq!(at("need_kw.high"), "Power that the job needs, high");
        assert_eq!(at("circuits[1]"), "Hydraulic outlets");
        assert_eq!(at("name"), "Name");
    }
}
