//! The words of yard files as people say them.

/// A word of a field.
pub fn word(key: &str, word: &str) -> Option<&'static str> {
    match key {
        "category" => category(word),
        "shaft" | "pto_end" | "far_end" => shaft(word),
        "source" => source(word),
        _ => plain(word),
    }
}

fn category(word: &str) -> Option<&'static str> {
    Some(match word {
        "1" => "1",
        "2" => "2",
        "3" => "3",
        "4n" => "4N",
        _ => return None,
    })
}

fn shaft(word: &str) -> Option<&'static str> {
    Some(match word {
        "1" => "Type 1: 1⅜ in, 6 splines",
        "2" => "Type 2: 1⅜ in, 21 splines",
        "3" => "Type 3: 1¾ in, 20 splines",
        "4" => "Type 4: 57.5 mm, 22 splines",
        _ => return None,
    })
}

fn plain(word: &str) -> Option<&'static str> {
    Some(match word {
        "tractor" => "Tractor",
        "skid_steer" => "Skid steer or track loader",
        "thrower" => "Thrower",
        "mulcher" => "Mulcher",
        "broom" => "Broom",
        "chipper" => "Chipper",
        "mower" => "Mower",
        "tiller" => "Tiller",
        "auger" => "Auger",
        "other" => "Something else that turns",
        "spur" => "Spur gears",
        "bevel" => "Bevel gears",
        "spiral_bevel" => "Spiral bevel gears",
        "worm" => "Worm gear",
        "belt" => "Belt",
        "chain" => "Chain",
        "joint_shaft" => "Joint shaft",
        "direct" => "Straight on, nothing between",
        "natural" => "Draws it in",
        "turbo" => "Turbo",
        "turbo_cooled" => "Turbo with charge cooler",
        "gear" => "Gears",
        "hydrostatic" => "Hydrostatic",
        "remotes" => "Remotes or third function",
        "standard_flow" => "Standard flow",
        "high_flow" => "High flow",
        "separate_pump" => "From a pump of its own",
        "fixed_priority" => "Takes a fixed flow first",
        "load_sensing_priority" => "Takes oil only while steering",
        "summed" => "Own pump, but added into the sheet's flow",
        "open_centre" => "Fixed pump, open centre",
        "pressure_compensated" => "Variable pump, pressure compensated",
        "load_sensing" => "Variable pump, load sensing",
        "iso-vg-22" => "ISO VG 22",
        "iso-vg-32" => "ISO VG 32",
        "iso-vg-46" => "ISO VG 46",
        "iso-vg-68" => "ISO VG 68",
        "iso-vg-100" => "ISO VG 100",
        "tractor-fluid" => "Tractor fluid",
        "clockwise" => "Clockwise",
        "anticlockwise" => "Anticlockwise",
        "rear" => "Rear",
        "front" => "Front",
        "mass" => "Tonnes of material",
        "area" => "Ground worked",
        "volume" => "Cubic metres of material",
        "length" => "Metres of way",
        "firm" => "Firm",
        "grass" => "Grass",
        "loose" => "Loose",
        "loader" => "On the loader",
        "front_frame" => "On a subframe in front",
        "rear_backwards" => "On the rear hitch, driving backwards",
        "rear_forwards" => "On the rear hitch, driving forwards",
        "rear_shaft" => "Rear shaft",
        "mid_shaft" => "Mid shaft",
        "turned_forward" => "Rear shaft turned forward",
        "machine_hydraulics" => "Machine hydraulics",
        "pump_pack" => "Pump pack",
        _ => return None,
    })
}

fn source(word: &str) -> Option<&'static str> {
    Some(match word {
        "own" => "Own figure or sheet",
        "computed" => "Computed from others",
        "common-practice" => "Common practice",
        "from-memory" => "From memory",
        "judgement" => "Judgement",
        "pump-reference" => "Reference on pumps",
        "motor-article" => "Article on motors",
        "rating-rule" => "86 % rule",
        "gear-note" => "Note on gears",
        "belt-sheet" => "Sheet on belts",
        "coupler-table" => "Table of couplers",
        "starting-note" => "Note on starting torque",
        "tank-rules" => "Rules for tanks",
        "surface-rules" => "Rules for a tank's surface",
        "mower-article" => "Article on mowers",
        "chipper-trial" => "Trial of chippers",
        "viscosity-chart" => "Chart of viscosities",
        _ => return None,
    })
}

#[cfg(test)]
mod tests {
    use super::word;
    use farend_core::source::Source;
    use farend_core::yard::rules::YARD;
    use farend_core::yard::shape::{Field, Shape};

    fn walk(fields: &[Field], see: &mut impl FnMut(&str, &str)) {
        for field in fields {
            match field.shape {
                Shape::Group(of) | Shape::Many { of, .. } => walk(of, see),
                Shape::OneOf(words) | Shape::Words { of: words, .. } => {
                    words.iter().for_each(|word| see(field.key, word));
                }
                _ => {}
            }
        }
    }

    #[test]
    fn every_word_of_the_rules_can_be_said() {
        let mut seen = 0;
        walk(YARD, &mut |key, it| {
            seen += 1;
            assert!(word(key, it).is_some(), "{key}: {it}");
        });
        assert!(seen > 50, "{seen}");
        for it in Source::WORDS {
            assert!(word("source", it).is_some(), "{it}");
        }
        assert_eq!(word("kind", "boat"), None);
    }
}
