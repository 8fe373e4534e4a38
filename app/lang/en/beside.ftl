### Two machines beside each other.

title = Beside another machine
other = The other machine
# In place of a machine.
none = none
note =
    Both with the same implement and job, at the same place; the other machine's speeds, flows and pressures as the
    yard has them.
price-of = Price, { $machine }
arrives-and-job = { $power }: { $standing }; the job { $time }

## Clauses of one sentence

brings-more = by its best route the { $other } brings { $power } more than the { $own }
brings-less = by its best route the { $other } brings { $power } less than the { $own }
job-takes = the job takes { $other } instead of { $own }
costs-more = it costs { $amount } more
costs-less = it costs { $amount } less
