package tiling

// step is a level part of the skyline.
type step struct {
	at, width, level int
	// last is the choice that lies at its right end, and base the level on
	// which that stands; single says that it is all of the step.
	last, base int
	single     bool
}

func lowest(sky []step) int {
	best := 0
	for i, st := range sky {
		if st.level < sky[best].level {
			best = i
		}
	}
	return best
}
