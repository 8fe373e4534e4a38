### No native speaker has read this yet.

cases = { $count ->
    [one] { $count } caso
   *[other] { $count } casos
}
between-clauses = ;{ " " }
named = { $name }: { $what }
stop = { $words }.
remark = { $what } ({ $remark })
brackets = ({ $remark })
pair = { $one }, { $other }
amount = { $what } { $amount }
between-amounts = { " · " }
between-items = ,{ " " }
