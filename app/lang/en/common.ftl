### What several parts of the page say.

cases = { $count ->
    [one] { $count } case
   *[other] { $count } cases
}
# Between clauses of one sentence.
between-clauses = ;{ " " }
# A thing and what is said of it, or what is done with it: "Less: Engine speed".
named = { $name }: { $what }
