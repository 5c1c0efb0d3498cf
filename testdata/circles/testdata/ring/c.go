package ring

func (s Second) third() int { return base + s.next.next.said() }
