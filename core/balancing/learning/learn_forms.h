// What is said about learning a loop from its readings. Not for the advice (advice_forms.h).
#pragma once

#include "core/base/fault.h"

namespace ww::balancing {

inline constexpr base::MessageForm kLearnNoReadings{
    "loop_learn_no_readings", "nothing has been read yet; take a survey with every valve fully open"};
inline constexpr base::MessageForm kLearnTooLarge{"loop_learn_too_large",
                                                  "readings of {1} rounds and {2} branches are too many to "
                                                  "learn the loop from; for advice make a job of each riser"};
inline constexpr base::MessageForm kLearnTurnedLeftOut{
    "loop_learn_turned_left_out",
    "{1} readings taken while valves were being turned are too many for a loop of this size and are left out "
    "of the learning; read the next round without turning valves in between"};
inline constexpr base::MessageForm kLearnSettingOutside{
    "loop_learn_setting_outside",
    "a reading at setting {1} is outside the valve's table and is left out of the learning; correct the "
    "setting"};
inline constexpr base::MessageForm kLearnAboveRange{
    "loop_learn_above_range",
    "{1} is above the range of instrument {2} and is left out of the learning; read it again, or give the "
    "reason"};
inline constexpr base::MessageForm kLearnStopped{"loop_learn_stopped",
                                                 "the learning was stopped; start it again"};
inline constexpr base::MessageForm kModelMisfit{
    "model_misfit",
    "the readings do not fit the loop as designed (probability {1w} %); look for a control valve that moves, "
    "air, a strainer or a pipe that the schedule lacks, the uncertainties given are too small"};
inline constexpr base::MessageForm kModelRoundLower{"model_round_lower",
                                                    "all dps of round {1} are about {2} % lower than round "
                                                    "{3} makes expect, as with {4} % less speed: was the "
                                                    "pump slowed, or another valve closed? Read the speed on "
                                                    "the drive and look at the valves of the main; no "
                                                    "single valve is to blame"};
inline constexpr base::MessageForm kModelRoundHigher{
    "model_round_higher",
    "all dps of round {1} are about {2} % higher than round {3} makes expect, as with {4} % more speed: was "
    "the pump set faster, or another valve opened? Read the speed on the drive and look at the valves of the "
    "main; no single valve is to blame"};
inline constexpr base::MessageForm kModelNotAsked{
    "model_not_asked",
    "with {1} terminals the readings are not compared with a learned loop here; use advise for that"};
inline constexpr base::MessageForm kModelPriorWidened{
    "model_prior_widened",
    "some design losses are far from what is read, so less is made of them all; check the schedule"};
inline constexpr base::MessageForm kModelWrongReading{
    "model_wrong_reading",
    "{1} in round {2} does not fit the other readings, which expect {3} (z {4}); read it again"};
inline constexpr base::MessageForm kModelDoubtfulPlace{
    "model_doubtful_place",
    "one of its readings does not fit the others: {1} in round {2}, expected {3} (z {4}); read it again now, "
    "that tells which one it is"};
inline constexpr base::MessageForm kModelReread{
    "model_reread",
    "{1} in round {2} stands out, {3} was expected (z {4}); read it again before anything rests on it, one "
    "round alone cannot tell a wrong reading from an obstruction"};
inline constexpr base::MessageForm kModelWrongUnit{"model_wrong_unit",
                                                   "{1} in round {2} does not fit the other readings, which "
                                                   "expect {3} (z {4}); the same digits in {5} would, "
                                                   "correct the unit or read it again"};
inline constexpr base::MessageForm kModelWrongPoint{"model_wrong_point",
                                                    "{1} in round {2} does not fit the other readings, which "
                                                    "expect {3} (z {4}); with the point moved {5} would, "
                                                    "correct it or read it again"};
inline constexpr base::MessageForm kModelWrongSetting{
    "model_wrong_setting",
    "{1} in round {2} does not fit the other readings, which expect {3} (z {4}); setting {5} instead of {6} "
    "would explain it, look at the handle and read it again"};
inline constexpr base::MessageForm kModelWrongValve{
    "model_wrong_valve",
    "{1} in round {2} does not fit the other readings, which expect {3} (z {4}); valve {5} instead of {6} "
    "would explain it, look at the valve's size and read it again"};
inline constexpr base::MessageForm kModelWrongSign{
    "model_wrong_sign",
    "{1} in round {2} does not fit the other readings, which expect {3} (z {4}); the hoses are probably "
    "reversed, swap them and read it again"};

}  // namespace ww::balancing
