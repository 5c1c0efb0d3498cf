package linework

import "regexp"

// made are names that programs give by themselves.
var made = regexp.MustCompile(`(?i)^(path|rect|polygon|polyline|circle|ellipse|g|use|line|svg|text|tspan|image|` +
	`surface|layer|vector|group|shape)([-_ .]?[0-9]+)*$`)

// Given is a name of something in a drawing that a person gave it; empty for one that a
// program has made.
func Given(name string) string {
	if made.MatchString(name) {
		return ""
	}
	return name
}
