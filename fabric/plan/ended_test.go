package plan

import (
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
)

func TestTimeForPeople(t *testing.T) {
	for after, want := range map[time.Duration]string{
		3100 * time.Millisecond: "3.1 s", 10 * time.Second: "10 s", 119 * time.Second: "119 s", 4 * time.Minute: "4 min",
	} {
		assert.Equal(t, want, Ended{After: after}.Time())
	}
}
