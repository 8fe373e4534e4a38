//! What is looked at for a fit, without its figures, and what each can come to.

use farend_core::fit::{Check, Judgement};

macro_rules! kinds {
    ($( $kind:ident: $( $judgement:ident )+; )+) => {
        /// What was looked at. One for each [`Check`]: the compiler asks for it.
        #[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
        pub enum ItemKind {
            $(
                #[doc = stringify!($kind)]
                $kind,
            )+
        }

        impl ItemKind {
            /// All, each with every judgement that it can have.
            pub const ALL: &[(Self, &[Judgement])] = &[
                $( (Self::$kind, &[$( Judgement::$judgement ),+]), )+
            ];

            /// That of a check.
            pub fn of(check: &Check) -> Self {
                match check {
                    $( Check::$kind { .. } => Self::$kind, )+
                }
            }
        }
    };
}

kinds! {
    Missing: Stop;
    InputSpeed: Pass Advice;
    PtoEnd: Pass Question Stop;
    FarEnd: Pass Question Stop;
    Direction: Pass Question Stop;
    ShaftTorque: Pass Advice Question;
    SlipClutch: Pass Question;
    Angle: Pass Advice Question Stop;
    LiftAngle: Pass Advice Question Stop;
    Overlap: Pass Advice Question Stop;
    Guards: Pass Question Stop;
    Category: Pass Advice Question Stop;
    Lift: Pass Advice Question Stop;
    FrontHooks: Pass Question;
    ThirdFunction: Pass Question Stop;
    Balance: Pass Advice Question;
    AxleLoad: Pass Question Stop;
    Couplers: Pass Advice Question;
    MotorFlow: Pass Advice;
    MotorPressure: Pass Advice;
    CaseDrain: Pass Question Stop;
    OilHeat: Pass Advice;
}
