package plan

import (
	"ellwand/fabric/rules"
	"ellwand/nest"
)

// count the work of a search.
func (t *Planner) count(o nest.Options, found nest.Result) {
	made := o.Passes
	if t.Ctx.Err() != nil {
		made = min(made, found.TotalPasses/2)
	}
	t.counted(Work{Due: o.Passes, Made: made})
}

// counted adds work; what is copied from the planner counts with it.
func (t *Planner) counted(more Work) {
	if t.Work == nil {
		t.Work = &Work{}
	}
	*t.Work = t.Work.Plus(more)
}

// Left counts a search that was due and not begun.
func (t *Planner) Left(share float64) { t.counted(Work{Due: t.Budget(share).Passes}) }

// Budget of one search, with a share of the whole.
func (t *Planner) Budget(share float64) nest.Options {
	if t.Options.Tables == nil {
		t.Options.Tables = NewTables()
	}
	o := nest.Options{
		Passes: t.Options.Passes, Enough: t.Options.Enough, Seed: t.Options.Seed, Workers: t.Options.Workers,
		Tables: t.Options.Tables,
	}
	if o.Passes == 0 {
		o.Passes, o.Patience = t.Options.Effort.passes(cutFrom(t.Wanted)), patience
	}
	if t.Options.share > 0 {
		share *= t.Options.share
	}
	return scaled(o, share)
}

// cutFrom counts the pieces to be cut.
func cutFrom(wanted []rules.Demand) int {
	n := 0
	for _, d := range wanted {
		n += d.Cut
	}
	return n
}

// scaled is a share of a budget.
func scaled(o nest.Options, share float64) nest.Options {
	o.Passes = max(1, int(share*float64(o.Passes)))
	return o
}
