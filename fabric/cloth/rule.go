package cloth

// Rule is what is known of a rule that pieces of a cloth keep, such as a border print:
// a field of Cloth. Its zero value asks for nothing.
type Rule interface {
	// Has reports whether the piece of that name keeps it.
	Has(piece string) bool
	// check refuses, with a sentence, what cannot be on a cloth of that width, mm, and
	// repeat. Say prints a length.
	check(width float64, repeat Repeat, say func(mm float64) string) error
}
