### The drawing of a route, for those who don't see it.

# The seat is a part of a sentence: "on the loader".
shows = Where { $route } goes on the machine, from the engine to the implement { $seat }.
