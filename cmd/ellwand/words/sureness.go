package words

import (
	"fmt"
	"strings"

	"ellwand/cmd/ellwand/app"
	"ellwand/cmd/ellwand/job"
	"ellwand/fabric/cloth"
	"ellwand/fabric/quote"
)

// Sureness says between which amounts the one to buy may prove to lie, what that
// comes from, and what would narrow it.
func Sureness(work *job.Work, found app.Estimated) string {
	shop := shopUnits(found.Cloth)
	say, r := shop(found.Buy), found.Range
	var unknown, narrower []string
	for _, doubt := range r.Doubts {
		what, how := doubtful(work, found.Cloth, doubt.Of)
		unknown, narrower = append(unknown, what), append(narrower, how)
	}
	switch {
	case len(r.Doubts) == 0:
		return fmt.Sprintf("%s are sure: nothing that it rests on is left unmeasured.", say)
	case r.Low == r.High:
		return fmt.Sprintf("It stays %s though %s.", say, listed(unknown))
	}
	return fmt.Sprintf("%s, say %s: %s. Narrower with %s.", Between(found.Cloth, r), say, listed(unknown),
		listed(narrower))
}

// TakesOfRemnant says between which lengths of a piece of cloth a job may prove to take,
// with its cut ends; empty where all of it is measured.
func TakesOfRemnant(work *job.Work, a app.RemnantAnswer) string {
	var unknown, narrower []string
	for _, doubt := range a.Range.Doubts {
		what, how := doubtful(work, a.Cloth, doubt.Of)
		unknown, narrower = append(unknown, what), append(narrower, how)
	}
	if len(unknown) == 0 {
		return ""
	}
	out := fmt.Sprintf("With the cut ends it takes %s to %s of the %s: %s.", bare(work.FormatLong(a.Range.Low)),
		work.FormatLong(a.Range.High), work.FormatLong(a.Length), listed(unknown))
	if a.Range.High > a.Length {
		out += fmt.Sprintf(" It may prove too little; surer with %s.", listed(narrower))
	}
	return out
}

// bare is a length without its unit, which follows.
func bare(length string) string { return length[:strings.LastIndex(length, " ")] }

// Between says between which amounts the one to buy may prove to lie: "1.30 to 1.50 m".
func Between(c cloth.Cloth, r quote.Range) string {
	shop := shopUnits(c)
	if r.Low == r.High {
		return shop(r.High)
	}
	return bare(shop(r.Low)) + " to " + shop(r.High)
}

// doubtful says what is not known, and what would tell.
func doubtful(work *job.Work, c cloth.Cloth, of quote.Unknown) (what, how string) {
	switch of {
	case quote.Measures:
		names := work.DerivedNames()
		if len(names) == 1 {
			return fmt.Sprintf("the %s is derived", names[0]), "it measured"
		}
		return "the " + named(names) + " are derived", "them measured"
	case quote.TrueWidth:
		return "the width is the shop's", "the cloth measured (width_measured: yes)"
	case quote.Washing:
		least, most := c.Shrinkage.Of.Shrinks()
		return fmt.Sprintf("%s shrinks by %.3g to %s", c.Shrinkage.Of, 100*least, percent(most)), "a washed sample"
	}
	return "a longer search may find less", "--effort long"
}

// mostNamed measurements are named; of more, the rest is counted.
const mostNamed = 2

func named(names []string) string {
	var out []string
	for i, name := range names {
		if i == mostNamed-1 && len(names) > mostNamed {
			out = append(out, fmt.Sprintf("%d more", len(names)-i))
			break
		}
		out = append(out, name)
	}
	return listed(out)
}

// listed joins phrases: "a, b and c".
func listed(all []string) string {
	if len(all) < 2 {
		return strings.Join(all, "")
	}
	return strings.Join(all[:len(all)-1], ", ") + " and " + all[len(all)-1]
}
