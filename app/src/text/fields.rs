//! Names of the fields of a yard file, as people know them.

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
        "place" => "Where it is",
        "invented" => "Made-up machines",
        "dealer" => "Who hands out its pages",
        "note" => "A line on those pages",
        "currency" => "Currency",
        "hour_price" => "Price of an hour of work",
        "machines" => "Machines",
        "implements" => "Implements",
        "kits" => "Kits",
        "format_version" => "Version of the file",
        // Every entry.
        "id" => "Short identifier, for links",
        "name" => "Name",
        "kind" => "Kind",
        "mass_kg" => "Weight",
        "price" => "Price",
        // A machine.
        "engine" => "Engine",
        "rear_pto" => "Rear PTO",
        "economy_pto" => "Rear PTO, economy gear",
        "mid_pto" => "Mid PTO",
        "circuits" => "Hydraulic outlets",
        "oil" => "Oil",
        "transmission" => "Transmission",
        "hitch" => "Three-point hitch",
        "loader" => "Loader",
        "axles" => "Axles",
        "end" => "Shaft end",
        "reservoir" => "Tank and cooler",
        // An implement.
        "rotor" => "Rotor",
        "need_kw" => "Power that the job needs",
        "shafts" => "Shaft drives",
        "motor" => "Hydraulic motor",
        "work" => "Its work",
        "travel" => "Over the ground",
        "mount" => "How it hangs",
        // A kit.
        "routes" => "Routes that it serves",
        "included" => "Comes along, nothing to buy",
        "pto_rpm" => "PTO speed",
        "drive" => "Mechanical steps",
        "pump" => "Pump",
        "hoses" => "Hoses and couplers",
        "shaft" => "Joint shaft",
        "seat" => "Where it puts the implement",
        "hookup_min" => "Time to hook it up",
        "fitting_price" => "Price of fitting it",
        // Oil, tanks, pumps, motors, couplers.
        "grade" => "Grade",
        "cst_40" => "Viscosity at 40 °C",
        "cst_100" => "Viscosity at 100 °C",
        "kg_m3" => "Density at 15 °C",
        "oil_l" => "Oil in the tank",
        "cooler_w_k" => "What the cooler sheds",
        "relief_bar" => "Relief pressure",
        "valve_bar" => "Pressure that the valve takes",
        "volumetric" => "Volumetric efficiency",
        "hydro_mechanical" => "Hydro-mechanical efficiency",
        "displacement_cm3" => "Displacement",
        "coupler_mm" => "Coupler size",
        "case_drain" => "Case drain",
        // Work and travel.
        "measure" => "Measured by",
        "idle_kw" => "Power idling",
        "kwh_per_unit" => "Energy for so much work",
        "width_m" => "Working width",
        "depth_m" => "Usual depth",
        "density_kg_m3" => "Density of the material",
        "usual_km_h" => "Usual speed",
        "highest_km_h" => "Highest speed for good work",
        "ground" => "Ground",
        "pushing_n" => "What the work pushes back with",
        // A mount.
        "category" => "Hitch category",
        "centre_m" => "Centre of mass, from the pins or hooks",
        "backwards" => "Works driving backwards",
        "guarded" => "All guards are there",
        // An uncertain figure.
        "low" => "Low",
        "likely" => "Likely",
        "high" => "High",
        "source" => "Where it comes from",
        _ => return None,
    })
}

fn engine(key: &str) -> Option<&'static str> {
    Some(match key {
        "net_kw" => "Net power",
        "gross_kw" => "Gross power",
        "rated_rpm" => "Rated speed",
        "lowest_rpm" => "Lowest speed under load",
        "curve" => "Power over speed",
        "aspiration" => "How it gets its air",
        _ => return None,
    })
}

fn curve(key: &str) -> Option<&'static str> {
    Some(match key {
        "rpm" => "Speed",
        "kw" => "Power",
        _ => return None,
    })
}

fn pto(key: &str) -> Option<&'static str> {
    Some(match key {
        "rpm" => "Shaft speed",
        "engine_rpm" => "At an engine speed of",
        "tested_kw" => "Power tested at the shaft",
        "rating_kw" => "Most that the shaft may take",
        _ => return None,
    })
}

fn circuit(key: &str) -> Option<&'static str> {
    Some(match key {
        "outlet" => "Outlet",
        "flow_l_min" => "Flow on the sheet",
        "engine_rpm" => "At an engine speed of",
        "steering" => "Steering's share",
        "supply" => "Kind of pump",
        _ => return None,
    })
}

fn steering(key: &str) -> Option<&'static str> {
    Some(match key {
        "policy" => "How steering gets its oil",
        "flow_l_min" => "Steering's flow",
        _ => return None,
    })
}

fn end(key: &str) -> Option<&'static str> {
    Some(match key {
        "shaft" => "Shaft type",
        "turns" => "Turns",
        "height_m" => "Height above the ground",
        "ahead_m" => "Ends ahead of the ball ends by",
        "behind_m" => "Ends behind the pins by",
        "above_m" => "Stands above the lower pins by",
        _ => return None,
    })
}

fn hitch(key: &str) -> Option<&'static str> {
    Some(match key {
        "category" => "Category",
        "lift_kg" => "Lifts",
        "lift_at_m" => "Measured behind the ball ends",
        "lowest_m" => "Ball ends at work, height",
        "highest_m" => "Ball ends lifted, height",
        _ => return None,
    })
}

fn loader(key: &str) -> Option<&'static str> {
    Some(match key {
        "lift_kg" => "Lifts at the pins",
        "reach_m" => "From pivot to pins",
        "third_function" => "Third function at its end",
        _ => return None,
    })
}

fn axles(key: &str) -> Option<&'static str> {
    Some(match key {
        "wheelbase_m" => "Wheelbase",
        "front_kg" => "Weight on the front axle",
        "front_limit_kg" => "Most on the front axle",
        "rear_limit_kg" => "Most on the rear axle",
        "loader_ahead_m" => "Front axle to the loader's pins",
        "frame_ahead_m" => "Front axle to a subframe's hooks",
        "hitch_behind_m" => "Rear axle to the ball ends",
        _ => return None,
    })
}

fn rotor(key: &str) -> Option<&'static str> {
    Some(match key {
        "rated_rpm" => "Rated speed",
        "lowest_rpm" => "Lowest speed for good work",
        "highest_rpm" => "Highest speed allowed",
        "diameter_mm" => "Diameter over the tips",
        _ => return None,
    })
}

fn shaft(key: &str) -> Option<&'static str> {
    Some(match key {
        "place" => "End of the machine",
        "rpm" => "Input speed",
        "drive" => "Steps to the rotor",
        "rating_kw" => "Most that the input may take",
        "end" => "Input shaft",
        "price" => "Price of the implement so",
        _ => return None,
    })
}

fn motor(key: &str) -> Option<&'static str> {
    Some(match key {
        "ratio" => "Rotor speed over motor speed",
        "drive" => "Steps to the rotor",
        "highest_l_min" => "Highest flow",
        "highest_bar" => "Highest pressure",
        "starting" => "Starting torque",
        "case_drain" => "Needs a case drain",
        "price" => "Price of the implement so",
        _ => return None,
    })
}

fn step(key: &str) -> Option<&'static str> {
    Some(match key {
        "ratio" => "Speed out over speed in",
        "efficiency" => "Efficiency",
        "rating_nm" => "Most torque at its output",
        "slip_clutch_nm" => "Slip clutch slips at",
        "angle_deg" => "Angle of each joint",
        _ => return None,
    })
}

fn pump(key: &str) -> Option<&'static str> {
    Some(match key {
        "highest_rpm" => "Highest speed",
        "suction_bore_mm" => "Suction line, inner diameter",
        "suction_length_m" => "Suction line, length",
        "suction_lift_m" => "Pump above the oil by",
        _ => return None,
    })
}

fn hoses(key: &str) -> Option<&'static str> {
    Some(match key {
        "bore_mm" => "Inner diameter",
        "length_m" => "Length one way",
        "back_bore_mm" => "Inner diameter of the hose back",
        "couplers" => "Couplers, there and back",
        "coupler_bar" => "Pressure that a coupler takes",
        "coupler_l_min" => "At a flow of",
        "fittings_k" => "Elbows and adapters, sum of K",
        _ => return None,
    })
}

fn kit_shaft(key: &str) -> Option<&'static str> {
    Some(match key {
        "pto_end" => "PTO type that it suits",
        "far_end" => "Input type that it suits",
        "closed_m" => "Length pushed together",
        "open_m" => "Length where its tubes part",
        "reverses" => "Turns the direction round",
        _ => return None,
    })
}

/// One of a list's groups.
pub fn item(key: &str) -> &'static str {
    match key {
        "circuits" => "Outlet",
        "shafts" => "Shaft drive",
        "drive" => "Step",
        "curve" => "Point",
        _ => "Entry",
    }
}

/// The name of what stands at a path such as `circuits[0].steering.flow_l_min.low`: that of its
/// last field, and of the figure where it is one of three.
pub fn at(path: &str) -> String {
    let keys: Vec<_> = keys(path).collect();
    let named = |group: &str, key: &str| field(group, key).unwrap_or_default().to_owned();
    match keys.as_slice() {
        [
            ..,
            group,
            key,
            figure @ ("low" | "likely" | "high" | "source"),
        ] => format!(
            "{}, {}",
            named(group, key),
            super::small(&named("", figure))
        ),
        [key, figure @ ("low" | "likely" | "high" | "source")] => {
            format!("{}, {}", named("", key), super::small(&named("", figure)))
        }
        [.., group, key] => named(group, key),
        [key] => named("", key),
        [] => String::new(),
    }
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
