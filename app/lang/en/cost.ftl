### What routes cost.

title = What it costs
lead =
    Your own prices, kept in the link. Without a price nothing is said of cost; enter 0 where something costs
    nothing.
currency = Currency, three letters (EUR, USD …)
other-currency = The yard's prices are in { $currency }: beside another currency they don't count.
currency-refused = Enter three letters, or nothing.
hour = An hour of work
kit = Kit
variant = Implement for this route
fitting = Fitting
total = To buy
per-power-unit = For each { $unit }
job = Working on the job
pays = Against the best shaft
# Behind "Enter a number, or leave it empty:".
prices = 0 or more, up to a billion.
note =
    Working on the job is time for it at the price of an hour, turning and stopping not counted. A dearer route has
    paid for itself after so many hours of its own work beside the best shaft route.

## When a route has paid for itself

at-once = pays at once
after = pays after { $time } of work
ahead-for = cheaper, slower: ahead for { $time } of work
never = never pays: no cheaper and no faster
