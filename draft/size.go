package draft

import "fmt"

// Size returns the body of a size of a published table: "women" (the handbook
// table, sizes 6 to 24) or "misses" (ASTM D5585-11e1, sizes 00 to 20, girths
// only).
func Size(table, size string) (Body, error) {
	return nil, fmt.Errorf("there is no size table %q; use one of: women, misses", table)
}

// Tables lists the size tables.
func Tables() []string { return []string{"women", "misses"} }
