package cloth

// Rule is what is known of a rule that pieces of a cloth keep, such as a border print:
// a field of Cloth. Its zero value asks for nothing.
type Rule interface {
	// Has reports whether the piece of that name keeps it.
	Has(piece string) bool
	// faults are what cannot be on a cloth of that width, mm, and repeat.
	faults(width float64, repeat Repeat) []Fault
}
