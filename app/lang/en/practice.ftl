### Practice: what several of its parts say. Its cases and parts have their own files beside this one.

parts = Parts of practice
part-walk = Follow the power
part-alone = Practise alone
part-group = For a group
part-record = How it goes

alone-lead =
    One case at a time: a machine, an implement, a question. Say what you think first, then see why. Nobody
    counts your mistakes.
what = What to practise
any-kind = A bit of everything
begin = Begin
begin-set = { $count ->
    [one] Go through the set: { $count } case
   *[other] Go through the set: { $count } cases
}
no-case =
    This yard has no pair of machine and implement that makes a fair case of that kind. Try another kind, or
    another yard.
find = Find a case again
case-number = Number of the case
# Said behind "Enter a number, or leave it empty:", as each `-allowed`.
number-allowed = a whole number from 0 to 4294967295.
show-case = Show this case
# By which a case can be found again. A number without marks of thousands.
number-of = Case { $seed }
of-set = Case { $place } of { $count } of the set

known = What is known
your-answer = Your answer
how-sure = How sure are you?
commit = That's my answer
missing-guess = Choose or enter an answer first; a guess will do.
missing-confidence = Say how sure you are, then it counts.
power = Power at the rotor
    .on-paper = Power at the rotor:
power-allowed = a power above zero.
yes = yes
no = no
not-known = not known

know-this = I know this: no help
example = Worked out on another pair
first-is-yours = The first step is yours: what would stand here?
show-first = Show the first step
to-begin-with = To begin with.

next-same = Next of this kind
next-any = Next of any kind
next-in-set = Next case of the set
set-done = That was the last case of the set.
look = Open this pair with all its figures

## Routes put in order

order = Most power first
apart = Set apart: can't be hooked up
up = Up
down = Down
cant = Can't be hooked up
can = Back into the order
moved = { $route } is now in place { $place }.
moved-apart = { $route } is set apart: can't be hooked up.
moved-back = { $route } is back in the order, last.

## Kinds of cases

kind-route = Which route brings most?
kind-amount = How much arrives?
kind-limit = What holds it back?
kind-sheet = Can this sheet be right?
kind-fit = Can it be hooked up?
kind-wanted = What would it take?

## Ideas, without the stop at their end

idea-power-is-flow-times-pressure = Oil's power is flow times pressure
idea-flow-is-speed = Flow is speed, pressure is torque
idea-every-change-costs = Every change of form costs
idea-shaft-brings-most = A shaft brings the most
idea-figures-belong-together = A sheet's figures must belong together
idea-it-must-hook-up = What can't be hooked up brings nothing

## How sure somebody is

guessing = Guessing
fairly-sure = Fairly sure
sure = Sure

## How much help there is. `.small` stands within a sentence.

help-shown = With an example beside it, worked out in full
    .small = with an example beside it, worked out in full
help-first-blank = With an example beside it, its first step left to you
    .small = with an example beside it, its first step left to you
help-all-blank = Without help
    .small = without help
