### For those who teach a group.

lead =
    Put a set of cases together, show them large, collect what the group thinks, and reveal when everybody has
    said something.
kinds = What the cases ask
count = How many
    .allowed = a whole number from 1 to 30.
seed = Number of the set
draw-anew = Draw another set
no-kind = Choose one kind at least.

share = Hand it out
copy-link = Copy the link to this set
save = Save the set (JSON)
open = Open a set…
opened = The set is open.
other-yard =
    This set was made in the yard “{ $yard }”. Another yard is open here, so these are other cases. Open that
    yard's file to have the same ones.

## Shown large

show = Show it large
close = Close
before = Case before
next = Next case
place = { $place } of { $count }
reveal = Reveal
take-back = Take it back
one-more = One more says
one-less = One fewer says
guesses = What the group says
a-guess = What somebody says
remove = Remove
none-yet = Nobody has said anything yet.
# Behind a number of voices and behind the right choice.
says = the group
right = this is it
spread = { $count ->
    [one] { $count } voice: { $middle }.
   *[other] { $count } voices: { $range }; in the middle, { $middle }.
}

## On paper

print = Print the sheet
print-answers = Print it with answers
sheet = Practice cases
    .with-answers = Practice cases, with answers
# A set as a line: how many cases it has is "8 cases".
set = Set { $seed }, { $cases }
answer = Answer
name-and-date = Name and date:
