package job

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// Every variant of bodice and sleeve reaches the draft from the job file.
func TestVariantsInTheJobFile(t *testing.T) {
	resolve := func(bodice, sleeve string) Made {
		file, err := Parse("job.yaml",
			[]byte("job: shirt\nunits: cm\nsize: 12\ntable: women\ngarments:\n  - {name: shirt, bodice: "+bodice+", sleeve: "+
				sleeve+"}\ncloths: [{name: shell, width: 140}]\n"))
		require.NoError(t, err)
		work, err := file.Resolve()
		require.NoError(t, err)
		assert.True(t, work.Garments[0].Truing.InRange())
		return work.Garments[0]
	}
	plain := resolve("{back: seam}", "{}")
	for _, c := range [][2]string{
		{"{dart: armhole}", "{}"}, {"{front: opening}", "{}"}, {"{front: opening, extension: 1.5}", "{}"},
		{"{back: opening}", "{}"}, {"{back: opening, extension: 1.5}", "{}"}, {"{neck_wider: 2}",
			"{}"}, {"{front_neck_lower: 3}", "{}"}, {"{back_neck_lower: 2}", "{}"},
		{"{below_waist: 24}", "{}"}, {"{below_waist: 24, hip_ease: 15}", "{}"},
		{"{dart: none}", "{}"}, {"{princess: shoulder}", "{}"}, {"{princess: armhole, below_waist: 60}",
			"{}"}, {"{yoke: 9}", "{}"},
		{"{}", "{style: two-piece}"}, {"{}", "{style: cap}"}, {"{}", "{style: shirt}"}, {"{}", "{reach: elbow}"}, {"{}",
			"{reach: short}"},
		{"{}", "{head_fullness: 1.5}"}, {"{}", "{hem_fullness: 1.5}"},
	} {
		made := resolve(c[0], c[1])
		assert.NotEqual(t, plain.Pieces, made.Pieces, "%s %s", c[0], c[1])
		assert.Len(t, made.Sheets, 3)
	}
}
