### No native speaker has read this yet.

cases = { $count ->
    [one] { $count } cas
   *[other] { $count } cas
}
between-clauses = { " ; " }
named = { $name } : { $what }
stop = { $words }.
remark = { $what } ({ $remark })
brackets = ({ $remark })
pair = { $one }, { $other }
amount = { $what } { $amount }
between-amounts = { " · " }
between-items = ,{ " " }
