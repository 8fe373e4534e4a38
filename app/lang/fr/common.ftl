### No native speaker has read this yet.

cases = { $count ->
    [one] { $count } cas
   *[other] { $count } cas
}
between-clauses = { " ; " }
named = { $name } : { $what }
