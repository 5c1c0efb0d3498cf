package ring

// Second needs what the third says of it.
type Second struct{ next *First }

func (s Second) said() int { return s.third() }
