### What several parts of the page say.

cases = { $count ->
    [one] { $count } case
   *[other] { $count } cases
}
# Between clauses of one sentence.
between-clauses = ;{ " " }
