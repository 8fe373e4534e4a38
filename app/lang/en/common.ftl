### What several parts of the page say.

cases = { $count ->
    [one] { $count } case
   *[other] { $count } cases
}
# Between clauses of one sentence.
between-clauses = ;{ " " }
# A thing and what is said of it, or what is done with it: "Less: Engine speed".
named = { $name }: { $what }
# A label that stands as a sentence before others: "PTO type."
stop = { $words }.
# What is added to something, behind it or by itself: "35 min (usually)".
remark = { $what } ({ $remark })
brackets = ({ $remark })
# Two that belong together: "540 rpm, 400 N·m".
pair = { $one }, { $other }
# A thing with its amount or number: "rear shaft 30 kW".
amount = { $what } { $amount }
# Between such things in one line.
between-amounts = { " · " }
between-items = ,{ " " }
