package measure

// Words for the units, in the order of the constants: their symbols.
func (Unit) Words() []string {
	words := make([]string, len(unitFacts))
	for i, facts := range unitFacts {
		words[i] = facts.symbol
	}
	return words
}
