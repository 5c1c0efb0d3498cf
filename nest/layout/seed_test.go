package layout

import "flag"

// The random tests draw the same cases each time; -rapid.seed draws others.
func init() { _ = flag.Set("rapid.seed", "1") }
