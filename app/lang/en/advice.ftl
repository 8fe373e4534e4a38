### Which route to take, why, where it sits and what that means.

# The pair is the picture's title: "Snow thrower on the Tractor".
take = { $pair }: take { $route }. { $power } of the engine's { $engine } arrive, the job needs { $need }.
equal =
    { $pair }: { $routes } come out equal, weighed by what matters to you. By the first { $power } of the engine's
    { $engine } arrive, the job needs { $need }.
no-route = { $pair }: nothing in this yard can drive it.
# The route begins a sentence, with a capital letter.
stopped =
    { $pair }: nothing can be hooked up as it stands. { $route } would do the work, but something stops it: see
    below.
too-weak = { $pair }: no route does this job well. { $route } comes nearest: { $standing }, { $at-work }.

## Reasons, as clauses

brings-part = it brings { $part } of what the job needs; in the long run it is { $standing }: { $at-work }
brings-times = it brings { $times } times what the job needs; in the long run it is { $standing }: { $at-work }
more-than = { $times } times as much arrives as by { $route }
hooks-up = it is hooked up in about { $time }
cheapest = of the routes that do the work it costs least to buy

view-ahead = the driver looks ahead at the work
view-over-the-shoulder = the driver looks over the shoulder now and then
view-behind = the driver looks behind for as long as the work takes
drives-over = the wheels go over the work before it is done
keeps-off = the wheels keep off the work until it is done
loader-stays = the loader stays on
loader-without-bucket = the loader stays on, its bucket comes off
loader-comes-off = the loader comes off

## What speaks against a route, and what it takes

# A list of clauses.
drawbacks = On the other hand { $drawbacks }.
takes = It takes: { $kit }.
to-mind = To mind: { $items }.
to-ask = To ask before: { $items }.

## Where a route puts the implement, within a sentence

seat-loader = on the loader
seat-front-frame = on a subframe in front
seat-rear-backwards = on the rear hitch, driving backwards
seat-rear-forwards = on the rear hitch, driving forwards

## Wishes, and how much they matter

look-ahead = Looking ahead at the work
keep-off = Not driving over it first
keep-loader = Keeping the loader on
hook-up-quickly = Hooking up quickly
buy-cheaply = Buying cheaply
weight-not = Not
weight-somewhat = Somewhat
weight-much = Much
