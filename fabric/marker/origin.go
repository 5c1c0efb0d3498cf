package marker

import (
	"ellwand/fabric/lay"
)

// origin is a stretch of the lay whose distances along run from its own left
// end.
type origin struct {
	from, to float64
	name     string // of a remnant; may be empty
}

// origins of a lay: one, unless it is cut into two lengths or lies on several
// remnants.
func origins(plan lay.Plan) []origin {
	if len(plan.Offcuts) > 1 {
		var out []origin
		for _, o := range plan.Offcuts {
			out = append(out, origin{o.From, o.To, o.Name})
		}
		return out
	}
	var out []origin
	for _, s := range stretches(plan) {
		out = append(out, origin{from: s.from, to: s.to})
	}
	return out
}

// originOf is the stretch that a piece lies on.
func originOf(plan lay.Plan, l lay.Laid) origin {
	return originAt(plan, l.Outline.Bound().Center()[0])
}

// originAt is the stretch at a place along the lay.
func originAt(plan lay.Plan, x float64) origin {
	all := origins(plan)
	for i := len(all) - 1; i > 0; i-- {
		if x > all[i].from {
			return all[i]
		}
	}
	return all[0]
}

// nameOrigins writes the names of the remnants over them.
func (s *sheets) nameOrigins(v view) {
	s.Bold(7.5)
	for _, o := range origins(s.plan) {
		from, to := max(o.from, v.from), min(o.to, v.to)
		if o.name == "" || from >= to {
			continue
		}
		a, b := v.at([2]float64{from, v.high}), v.at([2]float64{to, v.high})
		s.Text(a[0], a[1]-5, s.TextCut(o.name, b[0]-a[0]))
	}
}
