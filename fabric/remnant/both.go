package remnant

import "slices"

// mostPairs of changes are tried [source.OwnChoice].
const mostPairs = 12

// pairs lists two changes at a time, in the order of least harm: that of the
// places of both in the list.
func pairs(changes []Change) []Change {
	type two struct{ i, j int }
	var all []two
	for j := range changes {
		for i := range j {
			if !(changes[i].redrafts() && changes[j].redrafts()) {
				all = append(all, two{i, j})
			}
		}
	}
	slices.SortStableFunc(all, func(a, b two) int { return a.i + a.j - b.i - b.j })
	var out []Change
	for _, p := range all[:min(mostPairs, len(all))] {
		out = append(out, both(changes[p.i], changes[p.j]))
	}
	return out
}

// redrafts reports whether the change makes all pieces anew, so that it must
// come before any other.
func (c Change) redrafts() bool {
	return slices.ContainsFunc(c.Gives, func(g Given) bool { return g.Of == Shorter || g.Of == SmallerSize })
}

// both makes two changes. When one of them has a measure, the other is made
// whole; of two measures the second is the one that is looked for.
func both(a, b Change) Change {
	measured, whole := b, a
	if b.Most == 0 {
		measured, whole = a, b
	}
	return Change{
		Gives: slices.Concat(a.Gives, b.Gives), Most: measured.Most, Step: measured.Step,
		Make: func(q Question, by float64) (Question, bool) {
			if whole.redrafts() {
				return inTurn(q, whole, whole.Most, measured, by)
			}
			return inTurn(q, measured, by, whole, whole.Most)
		},
	}
}

func inTurn(q Question, first Change, by float64, second Change, then float64) (Question, bool) {
	q, changed := first.Make(q, by)
	if !changed {
		return q, false
	}
	return second.Make(q, then)
}
