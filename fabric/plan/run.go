package plan

import (
	"errors"
	"fmt"

	"ellwand/nest"
	"ellwand/nest/layout"
	"ellwand/nest/verify"
)

// Run a search for a problem, and count the work.
func (t *Planner) Run(problem layout.Problem, o nest.Options) (nest.Result, error) {
	found, err := nest.Solve(t.Ctx, problem, o)
	t.count(o, found)
	if errors.Is(err, nest.ErrUnverified) {
		err = fmt.Errorf("%w: %w", ErrInternal, err)
	}
	return found, err
}

// shorter returns the start when it is sound and the search, against its
// purpose, gave a longer layout.
func shorter(problem layout.Problem, found layout.Layout, start *layout.Layout) layout.Layout {
	if start != nil && start.Length < found.Length && verify.Layout(problem, *start) == nil {
		return *start
	}
	return found
}
