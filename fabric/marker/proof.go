package marker

import (
	"errors"
	"fmt"
	"strconv"
	"strings"

	proof "ellwand/fabric/check"
	"ellwand/fabric/lay"
	"ellwand/pieces/measure"
)

// Proven reads again every figure that is drawn for a plan: by the table each piece
// must come to lie where the plan has it, and each fact must be that of the plan.
func Proven(plan lay.Plan, options Options) error {
	var faults []error
	for i, row := range Rows(plan, options) {
		said := proof.Chalked{Along: row[6], Near: row[7], Far: row[8], Arrow: row[9], Unit: options.system().Unit()}
		faults = append(faults, proof.Chalk(plan, plan.Pieces[i], said))
	}
	s := sheets{plan: plan, options: options, denominator: 1}
	for _, f := range s.facts() {
		if err := options.factReadAgain(plan, f); err != nil {
			faults = append(faults, fmt.Errorf("%s: %w", f.name(), err))
		}
	}
	return errors.Join(faults...)
}

// factReadAgain holds what a fact says against the plan.
func (o Options) factReadAgain(plan lay.Plan, f fact) error {
	short := o.system().Step()
	long := short
	if strings.HasSuffix(f.value, " "+measure.Metre.String()) {
		long = 10
	}
	bought := 10.0
	if o.Inches {
		bought = 914.4 / 8
	}
	switch f.of {
	case ofClothWidth:
		return proof.Shown(f.value, plan.Cloth.Width, short)
	case ofUsableWidth:
		return proof.Shown(f.value, plan.Width, short)
	case ofLength:
		return proof.Shown(f.value, max(plan.Taken, plan.Length), long)
	case ofAmount:
		return proof.ShownToBuy(f.value, plan.Buy, bought)
	case ofRemnant:
		return proof.Shown(f.value, plan.Buy, long)
	case ofEfficiency:
		return percentReadAgain(f.value, plan.Density)
	case ofPlies:
		return pliesReadAgain(f.value, plan)
	case ofBound:
		return boundReadAgain(f.value, plan, long)
	}
	return nil
}

func boundReadAgain(text string, plan lay.Plan, step float64) error {
	if plan.Bound == 0 {
		return nil
	}
	least := plan.Bound
	if plan.Lay.IsAcross() {
		least *= 2
	}
	return proof.ShownAtLeast(text, least, step)
}

func percentReadAgain(text string, share float64) error {
	said, err := strconv.ParseFloat(strings.TrimSuffix(text, " %"), 64)
	if off := said - 100*share; err != nil || off > 0.051 || off < -0.051 {
		return fmt.Errorf("%q stands for %.4f", text, share)
	}
	return nil
}

// pliesReadAgain: as many plies are named as the parts of the plan have.
func pliesReadAgain(text string, plan lay.Plan) error {
	var want []string
	for _, part := range plan.Beds {
		if n := strconv.Itoa(part.Plies); len(want) == 0 || want[len(want)-1] != n {
			want = append(want, n)
		}
	}
	said, _, _ := strings.Cut(text, ",")
	if said != strings.Join(want, " and ") {
		return fmt.Errorf("%q stands for %s", text, strings.Join(want, " and "))
	}
	return nil
}
