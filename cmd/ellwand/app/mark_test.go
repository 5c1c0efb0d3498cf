package app

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
	"ellwand/fabric/plan"
	"ellwand/fabric/quote"
)

// The mark is of the job in its first half, and of where the pieces lie in its second.
func TestMark(t *testing.T) {
	p, f, first := keptAnew(t)
	mark := first.Lays[first.Chosen].Mark
	assert.Regexp(t, `^[0-9A-HJKMNP-TV-Z]{4}-[0-9A-HJKMNP-TV-Z]{4}$`, mark)
	again, err := f.find(t.Context(), p.cloth, p.all, plan.Options{})
	require.NoError(t, err)
	assert.Equal(t, mark, again.Lays[again.Chosen].Mark, "laid anew from the store")

	other := first.Lays[first.Chosen]
	other.Pieces = append(other.Pieces[:0:0], other.Pieces...)
	other.Pieces[0].X++
	moved := markOf(other, p.all)
	assert.Equal(t, mark[:5], moved[:5])
	assert.NotEqual(t, mark, moved)
	other.Cloth.Width++
	assert.NotEqual(t, mark[:4], markOf(other, p.all)[:4])
}

// After a quote it is told whether the lay has changed since, or the job.
func TestSinceQuote(t *testing.T) {
	t.Setenv("XDG_CACHE_HOME", t.TempDir())
	work, err := ReadJob(t.Context(), writtenJob(t, settledJob))
	require.NoError(t, err)
	planned := Planned{Plan: lay.Plan{Cloth: cloth.Cloth{Name: "shell"}, Mark: "ABCD-2222"}}
	since := func(quoted string) Change {
		if quoted != "" {
			option := quote.Option{Amount: quote.Amount{Found: quote.Found{Mark: quoted}}}
			remember(work, Search{}, []quote.ClothRequest{{Cloth: "shell", Option: option}})
		}
		change, mark := SinceQuote(work, Search{}, planned)
		assert.Equal(t, quoted, mark)
		return change
	}
	assert.Equal(t, Unchanged, since(""), "never quoted")
	assert.Equal(t, Unchanged, since("ABCD-2222"))
	assert.Equal(t, LayChanged, since("ABCD-7777"))
	assert.Equal(t, JobChanged, since("WXYZ-2222"))
}
