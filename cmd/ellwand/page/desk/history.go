package desk

// history of a job: its states, one step from each other, with the one that stands.
type history struct {
	begin state
	steps []step
	at    int // of the steps so many are made
	now   state
}

// add a step to what stands; steps that were gone back are forgotten.
func (h *history) add(s step) bool {
	now, ok := s.after(h.now)
	if !ok {
		return false
	}
	h.steps, h.now = append(h.steps[:h.at:h.at], s), now
	h.at++
	return true
}

// amend the step that was made last, as typing goes on: both become one.
func (h *history) amend(s step) bool {
	now, ok := s.after(h.now)
	if !ok || h.at == 0 {
		return false
	}
	before, ok := h.steps[h.at-1].back().after(h.now)
	if !ok {
		return false
	}
	whole := stepBetween(before, now)
	whole.Kind, whole.Path, whole.When, whole.Going = s.Kind, s.Path, s.When, s.Going
	h.steps, h.now = append(h.steps[:h.at-1:h.at-1], whole), now
	return true
}

// move goes back or forth until so many steps are made.
func (h *history) move(to int) bool {
	if to < 0 || to > len(h.steps) {
		return false
	}
	for h.at != to {
		s, next := step{}, h.at+1
		if to < h.at {
			s, next = h.steps[h.at-1].back(), h.at-1
		} else {
			s = h.steps[h.at]
		}
		now, ok := s.after(h.now)
		if !ok {
			return false
		}
		h.now, h.at = now, next
	}
	return true
}

// goesOn says that a step is typing in the same place as the last one.
func (h *history) goesOn(s step) bool {
	if h.at == 0 || h.at != len(h.steps) || !s.Going {
		return false
	}
	last := h.steps[h.at-1]
	return last.Going && last.Path == s.Path
}

// mostListed are so many steps that are listed; all of them can be gone back
// [source.OwnChoice].
const mostListed = 200

// list the last steps, and how it began where they are all.
func (h *history) list() []Made {
	first := max(0, len(h.steps)-mostListed)
	var out []Made
	if first == 0 && len(h.steps) > 0 {
		out = append(out, Made{When: h.steps[0].When, Kind: Begun, Now: h.at == 0})
	}
	for i, s := range h.steps[first:] {
		out = append(out, Made{Step: first + i + 1, When: s.When, Kind: s.Kind, Path: s.Path, Now: h.at == first+i+1})
	}
	return out
}
