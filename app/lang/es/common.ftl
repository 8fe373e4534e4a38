### No native speaker has read this yet.

cases = { $count ->
    [one] { $count } caso
   *[other] { $count } casos
}
between-clauses = ;{ " " }
named = { $name }: { $what }
