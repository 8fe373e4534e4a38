//! The words of yard files as people say them.

use super::say::words;

/// A word of a field.
pub fn word(key: &str, word: &str) -> Option<&'static str> {
    match key {
        "category" => category(word),
        "shaft" | "pto_end" | "far_end" => shaft(word),
        "source" => source(word),
        _ => plain(word),
    }
}

/// Categories have the same names everywhere, and so have grades of oil.
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
        "1" => words::shaft_1(),
        "2" => words::shaft_2(),
        "3" => words::shaft_3(),
        "4" => words::shaft_4(),
        _ => return None,
    })
}

fn plain(word: &str) -> Option<&'static str> {
    Some(match word {
        "tractor" => words::tractor(),
        "skid_steer" => words::skid_steer(),
        "thrower" => words::thrower(),
        "mulcher" => words::mulcher(),
        "broom" => words::broom(),
        "chipper" => words::chipper(),
        "mower" => words::mower(),
        "tiller" => words::tiller(),
        "auger" => words::auger(),
        "other" => words::other(),
        "spur" => words::spur(),
        "bevel" => words::bevel(),
        "spiral_bevel" => words::spiral_bevel(),
        "worm" => words::worm(),
        "belt" => words::belt(),
        "chain" => words::chain(),
        "joint_shaft" => words::joint_shaft(),
        "direct" => words::direct(),
        "natural" => words::natural(),
        "turbo" => words::turbo(),
        "turbo_cooled" => words::turbo_cooled(),
        "gear" => words::gear(),
        "hydrostatic" => words::hydrostatic(),
        "remotes" => words::remotes(),
        "standard_flow" => words::standard_flow(),
        "high_flow" => words::high_flow(),
        "separate_pump" => words::separate_pump(),
        "fixed_priority" => words::fixed_priority(),
        "load_sensing_priority" => words::load_sensing_priority(),
        "summed" => words::summed(),
        "open_centre" => words::open_centre(),
        "pressure_compensated" => words::pressure_compensated(),
        "load_sensing" => words::load_sensing(),
        "iso-vg-22" => "ISO VG 22",
        "iso-vg-32" => "ISO VG 32",
        "iso-vg-46" => "ISO VG 46",
        "iso-vg-68" => "ISO VG 68",
        "iso-vg-100" => "ISO VG 100",
        "tractor-fluid" => words::tractor_fluid(),
        "clockwise" => words::clockwise(),
        "anticlockwise" => words::anticlockwise(),
        "rear" => words::rear(),
        "front" => words::front(),
        "mass" => words::mass(),
        "area" => words::area(),
        "volume" => words::volume(),
        "length" => words::length(),
        "firm" => words::firm(),
        "grass" => words::grass(),
        "loose" => words::loose(),
        "loader" => words::loader(),
        "front_frame" => words::front_frame(),
        "rear_backwards" => words::rear_backwards(),
        "rear_forwards" => words::rear_forwards(),
        "rear_shaft" => words::rear_shaft(),
        "mid_shaft" => words::mid_shaft(),
        "turned_forward" => words::turned_forward(),
        "machine_hydraulics" => words::machine_hydraulics(),
        "pump_pack" => words::pump_pack(),
        _ => return None,
    })
}

fn source(word: &str) -> Option<&'static str> {
    Some(match word {
        "own" => words::own(),
        "computed" => words::computed(),
        "common-practice" => words::common_practice(),
        "from-memory" => words::from_memory(),
        "judgement" => words::judgement(),
        "pump-reference" => words::pump_reference(),
        "motor-article" => words::motor_article(),
        "rating-rule" => words::rating_rule(),
        "gear-note" => words::gear_note(),
        "belt-sheet" => words::belt_sheet(),
        "coupler-table" => words::coupler_table(),
        "starting-note" => words::starting_note(),
        "tank-rules" => words::tank_rules(),
        "surface-rules" => words::surface_rules(),
        "mower-article" => words::mower_article(),
        "chipper-trial" => words::chipper_trial(),
        "viscosity-chart" => words::viscosity_chart(),
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
