package cloth

// Defect is what a cloth cannot have. A rule of the cloth has its own; the sentence of
// each is in fabric/words.
type Defect string

// Fault is something that is wrong with a cloth.
type Fault struct {
	Of Defect
	// Cloth that it is about, as String names it.
	Cloth string
	// Length and Other that are wrong, mm; Share of what is one.
	Length, Other, Share float64
	// Flaw that it is about, by its name.
	Flaw string
}

// Error names the cloth and what is wrong; people read the sentence of fabric/words.
func (f Fault) Error() string {
	if f.Cloth == "" {
		return string(f.Of)
	}
	return f.Cloth + ": " + string(f.Of)
}
